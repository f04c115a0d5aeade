package endfloat.kernel;

/**
 * What a run may take.
 *
 * @param seconds after which it is ended
 * @param megabytes of heap of its process
 */
public record KernelLimits(int seconds, int megabytes) {
  /** Unless told otherwise. */
  public static final KernelLimits USUAL = new KernelLimits(60, 512);

  /** Such as {@code 60 s, 512 MB}. */
  String words() {
    return seconds + " s, " + megabytes + " MB";
  }
}
