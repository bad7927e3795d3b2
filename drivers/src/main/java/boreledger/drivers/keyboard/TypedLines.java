package boreledger.drivers.keyboard;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;

/** Feeds a keyboard line with the lines of a stream, such as standard input in a terminal. */
public final class TypedLines implements Runnable {
  private static final int LONGEST = 4096;

  private final BufferedReader reader;
  private final KeyboardLine line;

  /** Nothing is read yet. */
  public TypedLines(InputStream input, KeyboardLine line) {
    reader = new BufferedReader(new InputStreamReader(input, StandardCharsets.UTF_8));
    this.line = line;
  }

  /** Reads on a daemon thread of its own, which may outlive the line: such reads do not end. */
  public void start() {
    Thread thread = new Thread(this, "typed lines");
    thread.setDaemon(true);
    thread.start();
  }

  /** Reads to the stream's end. */
  @Override
  public void run() {
    StringBuilder text = new StringBuilder();
    try {
      for (int next = reader.read(); next >= 0; next = reader.read()) {
        take((char) next, text);
      }
    } catch (IOException e) {
      // A stream that breaks has no more to give either; the line says so.
    }
    if (!text.isEmpty()) {
      line.unfinished(text.toString());
    }
    line.end();
  }

  private void take(char next, StringBuilder text) {
    if (next == '\n') {
      int last = text.length() - 1;
      boolean returned = last >= 0 && text.charAt(last) == '\r';
      line.typed(returned ? text.substring(0, last) : text.toString());
      text.setLength(0);
    } else {
      text.append(next);
      if (text.length() >= LONGEST) {
        line.unfinished(text.toString());
        text.setLength(0);
      }
    }
  }
}
