package boreledger.drivers.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * A UTF-8 text file, read completely.
 *
 * @param path the file as the person named it, which is how messages name it
 * @param text its exact text; encoding it as UTF-8 gives the file's bytes again
 */
public record TextFile(Path path, String text) {
  /** The file's name without its folder. */
  public String fileName() {
    return path.getFileName().toString();
  }

  /**
   * Reads a file of at most {@code maxBytes} bytes.
   *
   * @throws FileProblem if it is missing, a folder, not readable, too large or not UTF-8
   */
  public static TextFile read(Path path, int maxBytes) throws FileProblem {
    byte[] content = bytes(path, maxBytes);
    if (content.length > maxBytes) {
      String what = "larger than " + maxBytes + " bytes, expected a smaller file";
      throw FileProblem.of(path.toString(), what, null);
    }
    return new TextFile(path, decode(path.toString(), content));
  }

  private static byte[] bytes(Path path, int maxBytes) throws FileProblem {
    String file = path.toString();
    if (Files.isDirectory(path)) {
      throw FileProblem.of(file, "a folder, expected a file", null);
    }
    try (InputStream in = Files.newInputStream(path)) {
      return in.readNBytes(maxBytes + 1);
    } catch (NoSuchFileException e) {
      throw FileProblem.of(file, "no such file", e);
    } catch (AccessDeniedException e) {
      throw FileProblem.of(file, "no permission to read it", e);
    } catch (IOException e) {
      throw FileProblem.of(file, "cannot be read: " + OneLine.of(e.getMessage()), e);
    }
  }

  private static String decode(String file, byte[] content) throws FileProblem {
    ByteBuffer in = ByteBuffer.wrap(content);
    CharBuffer out = CharBuffer.allocate(content.length + 1);
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
    CoderResult result = decoder.decode(in, out, true);
    out.flip();
    if (result.isError()) {
      String before = out.toString();
      int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
      int column = before.length() - before.lastIndexOf('\n');
      String found = String.format(Locale.ROOT, "byte %02x is not UTF-8", content[in.position()]);
      throw FileProblem.at(file, line, column, found + ", expected UTF-8 text");
    }
    return out.toString();
  }
}
