package endfloat.child;

import io.github.spencerpark.jupyter.messages.publish.PublishStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** What a clause prints becomes stream messages; it has no keyboard to read from. */
final class CapturedStreams {
  private static final int MOST_BYTES = 1 << 20;

  private final Published out;
  private final Published err;

  CapturedStreams(Outputs outputs) {
    out = new Published(outputs, PublishStream.StreamType.OUT);
    err = new Published(outputs, PublishStream.StreamType.ERR);
  }

  void install() {
    System.setOut(new PrintStream(out, true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(err, true, StandardCharsets.UTF_8));
    System.setIn(new NoKeyboard());
  }

  /** A new request: nothing printed yet. */
  void begin() {
    out.begin();
    err.begin();
  }

  /** What is printed from here on until the next request is dropped. */
  void silence() {
    flush();
    out.silence();
    err.silence();
  }

  void flush() {
    System.out.flush();
    System.err.flush();
    out.flush();
    err.flush();
  }

  /** Collects to the end of a line, so that a print is not a message a character. */
  private static final class Published extends OutputStream {
    private static final int FULL = 8192;

    private final Outputs outputs;
    private final PublishStream.StreamType type;
    private final java.io.ByteArrayOutputStream held = new java.io.ByteArrayOutputStream();
    private int sent;
    private boolean silent;

    Published(Outputs outputs, PublishStream.StreamType type) {
      this.outputs = outputs;
      this.type = type;
    }

    synchronized void begin() {
      held.reset();
      sent = 0;
      silent = false;
    }

    synchronized void silence() {
      silent = true;
    }

    @Override
    public synchronized void write(int one) {
      if (silent) {
        return;
      }
      held.write(one);
      if (held.size() >= FULL) {
        flush();
      }
    }

    @Override
    public synchronized void write(byte[] bytes, int from, int count) {
      if (silent) {
        return;
      }
      held.write(bytes, from, count);
      if (held.size() >= FULL) {
        flush();
      }
    }

    @Override
    public synchronized void flush() {
      if (held.size() == 0) {
        return;
      }
      String text = held.toString(StandardCharsets.UTF_8);
      held.reset();
      if (sent > MOST_BYTES) {
        return;
      }
      sent += text.length();
      outputs.stream(
          type, sent > MOST_BYTES ? text + "\n(more was printed than is shown)\n" : text);
    }
  }

  private static final class NoKeyboard extends InputStream {
    @Override
    public int read() throws IOException {
      throw new IOException("there is no keyboard to read from here");
    }

    @Override
    public int read(byte[] into, int from, int count) throws IOException {
      return read();
    }
  }
}
