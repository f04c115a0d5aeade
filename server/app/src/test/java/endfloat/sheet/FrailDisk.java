package endfloat.sheet;

import endfloat.record.FileStore;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/**
 * A disk in memory that fails at operation N, and of which a crash keeps no more than was forced to
 * it. What was not forced survives wholly, in part, or not at all, at random; names and contents
 * each for themselves. After a force that failed, what it was to force is never kept, unless
 * written again.
 */
final class FrailDisk implements FileStore {
  /** How it fails. */
  enum Failure {
    /** One operation fails, having done nothing, half or all of its work. */
    ONCE,
    /** As ONCE, and every operation after it fails as well. */
    FROM_THEN_ON
  }

  private static final class Content {
    byte[] now = new byte[0];
    byte[] forced = new byte[0];
    final List<Write> pending = new ArrayList<>();
  }

  /** A write, or with no bytes a cut, that is not on the disk yet. */
  private record Write(long position, byte[] bytes) {}

  private final Random random;
  private final Map<Path, Content> names = new TreeMap<>();
  private final Map<Path, Content> forcedNames = new TreeMap<>();
  private final Set<Path> folders = new HashSet<>();
  private final Set<Path> forcedFolders = new HashSet<>();
  private long operations;
  private long failAt = Long.MAX_VALUE;
  private Failure failure = Failure.ONCE;

  FrailDisk(Random random) {
    this.random = random;
  }

  void failAt(long operation, Failure how) {
    failAt = operation;
    failure = how;
  }

  void heal() {
    failAt = Long.MAX_VALUE;
  }

  long operations() {
    return operations;
  }

  /** The disk as the next start of the machine finds it. */
  FrailDisk afterPowerCut() {
    FrailDisk next = new FrailDisk(random);
    next.folders.addAll(forcedFolders);
    for (Path folder : folders) {
      if (random.nextBoolean()) {
        next.folders.add(folder);
      }
    }
    Map<Path, Content> kept = new TreeMap<>(forcedNames);
    Set<Path> all = new HashSet<>(names.keySet());
    all.addAll(forcedNames.keySet());
    for (Path name : all) {
      if (names.get(name) != forcedNames.get(name) && random.nextBoolean()) {
        if (names.containsKey(name)) {
          kept.put(name, names.get(name));
        } else {
          kept.remove(name);
        }
      }
    }
    kept.forEach(
        (name, content) -> {
          if (next.reachable(name)) {
            next.plant(name, survivor(content));
          }
        });
    next.forcedFolders.addAll(next.folders);
    return next;
  }

  /** The disk as the next start of the program finds it: the machine lost nothing. */
  FrailDisk afterKill() {
    FrailDisk next = new FrailDisk(random);
    next.folders.addAll(folders);
    next.forcedFolders.addAll(folders);
    names.forEach((name, content) -> next.plant(name, content.now));
    return next;
  }

  /** Somebody else writes a file. */
  void plant(Path name, byte[] bytes) {
    Content content = new Content();
    content.now = bytes;
    content.forced = bytes;
    names.put(name, content);
    forcedNames.put(name, content);
    for (Path folder = name.getParent(); folder != null; folder = folder.getParent()) {
      folders.add(folder);
      forcedFolders.add(folder);
    }
  }

  void remove(Path name) {
    names.remove(name);
    forcedNames.remove(name);
  }

  private boolean reachable(Path name) {
    for (Path folder = name.getParent(); folder != null; folder = folder.getParent()) {
      if (!folders.contains(folder)) {
        return false;
      }
    }
    return true;
  }

  private byte[] survivor(Content content) {
    byte[] bytes = content.forced;
    for (Write write : content.pending) {
      int luck = random.nextInt(3);
      if (luck == 0) {
        continue;
      }
      byte[] part =
          luck == 1
              ? write.bytes()
              : Arrays.copyOf(write.bytes(), random.nextInt(write.bytes().length + 1));
      bytes =
          write.bytes().length == 0
              ? cut(bytes, write.position())
              : put(bytes, write.position(), part);
    }
    return bytes;
  }

  private static byte[] put(byte[] into, long position, byte[] bytes) {
    byte[] result = Arrays.copyOf(into, (int) Math.max(into.length, position + bytes.length));
    System.arraycopy(bytes, 0, result, (int) position, bytes.length);
    return result;
  }

  private static byte[] cut(byte[] bytes, long size) {
    return Arrays.copyOf(bytes, (int) Math.min(bytes.length, size));
  }

  /** What an operation does and whether it fails after part of it. */
  private enum Luck {
    DONE,
    NOTHING,
    HALF,
    DONE_BUT_FAILED
  }

  private Luck luck() {
    operations++;
    boolean fails = failure == Failure.ONCE ? operations == failAt : operations >= failAt;
    return fails ? Luck.values()[1 + random.nextInt(3)] : Luck.DONE;
  }

  private static void failUnless(Luck luck) throws IOException {
    if (luck != Luck.DONE) {
      throw new IOException("the disk failed on purpose");
    }
  }

  @Override
  public Optional<byte[]> read(Path file) throws IOException {
    failUnless(luck());
    return Optional.ofNullable(names.get(file)).map(content -> content.now.clone());
  }

  @Override
  public Optional<Stamp> stamp(Path file) throws IOException {
    failUnless(luck());
    return Optional.ofNullable(names.get(file))
        .map(content -> new Stamp(content.now.length, Arrays.hashCode(content.now)));
  }

  @Override
  public List<String> list(Path folder) throws IOException {
    failUnless(luck());
    return names.keySet().stream()
        .filter(name -> folder.equals(name.getParent()))
        .map(name -> name.getFileName().toString())
        .sorted()
        .toList();
  }

  @Override
  public void createFolder(Path folder) throws IOException {
    Luck luck = luck();
    if (luck != Luck.NOTHING) {
      for (Path each = folder; each != null; each = each.getParent()) {
        folders.add(each);
      }
    }
    failUnless(luck);
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    Luck luck = luck();
    if (luck == Luck.NOTHING) {
      failUnless(luck);
    }
    Content content = names.computeIfAbsent(file, any -> new Content());
    content.now = luck == Luck.HALF ? cut(bytes, random.nextInt(bytes.length + 1)) : bytes;
    if (luck == Luck.DONE) {
      content.forced = bytes;
    } else {
      content.forced = cut(bytes, random.nextInt(bytes.length + 1));
    }
    content.pending.clear();
    failUnless(luck);
  }

  @Override
  public void rename(Path from, Path to) throws IOException {
    Luck luck = luck();
    if (luck == Luck.DONE || luck == Luck.DONE_BUT_FAILED) {
      names.put(to, names.remove(from));
    }
    failUnless(luck);
  }

  @Override
  public void syncFolder(Path folder) throws IOException {
    Luck luck = luck();
    if (luck == Luck.DONE || luck == Luck.DONE_BUT_FAILED) {
      forcedNames.keySet().removeIf(name -> folder.equals(name.getParent()));
      names.forEach(
          (name, content) -> {
            if (folder.equals(name.getParent())) {
              forcedNames.put(name, content);
            }
          });
      for (Path each : folders) {
        if (folder.equals(each.getParent())) {
          forcedFolders.add(each);
        }
      }
    }
    failUnless(luck);
  }

  @Override
  public void delete(Path file) throws IOException {
    Luck luck = luck();
    if (luck == Luck.DONE || luck == Luck.DONE_BUT_FAILED) {
      names.remove(file);
    }
    failUnless(luck);
  }

  @Override
  public Tail openTail(Path file) throws IOException {
    failUnless(luck());
    Content content = names.computeIfAbsent(file, any -> new Content());
    return new Tail() {
      @Override
      public void writeAt(long position, byte[] bytes) throws IOException {
        Luck luck = luck();
        byte[] part =
            switch (luck) {
              case NOTHING -> new byte[0];
              case HALF -> cut(bytes, random.nextInt(bytes.length + 1));
              default -> bytes;
            };
        if (part.length > 0) {
          content.now = put(content.now, position, part);
          content.pending.add(new Write(position, part));
        }
        failUnless(luck);
      }

      @Override
      public void truncate(long size) throws IOException {
        Luck luck = luck();
        if (luck == Luck.DONE || luck == Luck.DONE_BUT_FAILED) {
          content.now = cut(content.now, size);
          content.pending.add(new Write(size, new byte[0]));
        }
        failUnless(luck);
      }

      @Override
      public void sync() throws IOException {
        Luck luck = luck();
        if (luck == Luck.DONE || luck == Luck.DONE_BUT_FAILED) {
          content.forced = applied(content);
        }
        // after a failed force the system takes the pages for clean: they are never written again
        content.pending.clear();
        failUnless(luck);
      }

      @Override
      public void close() throws IOException {
        failUnless(luck());
      }
    };
  }

  private static byte[] applied(Content content) {
    byte[] bytes = content.forced;
    for (Write write : content.pending) {
      bytes =
          write.bytes().length == 0
              ? cut(bytes, write.position())
              : put(bytes, write.position(), write.bytes());
    }
    return bytes;
  }
}
