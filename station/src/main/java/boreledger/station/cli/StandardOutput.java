package boreledger.station.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;

/** Standard output for what is too long to be held: it says when nobody takes it any more. */
final class StandardOutput extends Writer {
  private final PrintWriter out;

  StandardOutput(PrintWriter out) {
    this.out = out;
  }

  @Override
  public void write(char[] text, int from, int length) throws IOException {
    out.write(text, from, length);
    flush();
  }

  @Override
  public void flush() throws IOException {
    if (out.checkError()) {
      throw new IOException("nobody takes the output any more");
    }
  }

  @Override
  public void close() throws IOException {
    flush();
  }
}
