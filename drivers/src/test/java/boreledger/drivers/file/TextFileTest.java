package boreledger.drivers.file;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import boreledger.drivers.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TextFileTest {
  @TempDir Path folder;

  private Path file(byte... content) throws IOException {
    return Files.write(folder.resolve("some.toml"), content);
  }

  @Test
  void textIsGivenExactly() throws Exception {
    String text = "a = \"Größe 1\"\r\n# \uD834\uDD1E\n";
    assertEquals(text, TextFile.read(file(text.getBytes(UTF_8)), 100).text());
  }

  @Test
  void fileNameHasNoFolder() throws Exception {
    assertEquals("some.toml", TextFile.read(file(), 100).fileName());
  }

  @Test
  void missingFileIsNamed() {
    Path missing = folder.resolve("none.toml");
    assertEquals(missing + ": no such file", Problem.of(() -> TextFile.read(missing, 100)));
  }

  @Test
  void folderIsRefused() {
    assertEquals(
        folder + ": a folder, expected a file", Problem.of(() -> TextFile.read(folder, 100)));
  }

  @Test
  void fileOfTheLargestSizeIsRead() throws Exception {
    assertEquals("abc", TextFile.read(file("abc".getBytes(UTF_8)), 3).text());
  }

  @Test
  void largerFileIsRefused() throws Exception {
    Path file = file("abcd".getBytes(UTF_8));
    assertEquals(
        file + ": larger than 3 bytes, expected a smaller file",
        Problem.of(() -> TextFile.read(file, 3)));
  }

  @Test
  void byteThatIsNotUtf8IsRefusedWithItsPlace() throws Exception {
    Path file = file((byte) 'a', (byte) '\n', (byte) 'b', (byte) 'c', (byte) 0xe9, (byte) '\n');
    assertEquals(
        file + ":2:3: byte e9 is not UTF-8, expected UTF-8 text",
        Problem.of(() -> TextFile.read(file, 100)));
  }

  @Test
  void utf8CutShortIsRefusedWithItsPlace() throws Exception {
    Path file = file((byte) 'a', (byte) 0xc3);
    assertEquals(
        file + ":1:2: byte c3 is not UTF-8, expected UTF-8 text",
        Problem.of(() -> TextFile.read(file, 100)));
  }
}
