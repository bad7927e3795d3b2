package boreledger.station.cli;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A small medium mounted on a folder, which can be full or made read-only, or a file mounted on
 * itself. Permissions do not bind root, a medium does.
 */
final class Medium implements AutoCloseable {
  private static final String FILLING = "filling";

  private final Path at;

  private Medium(Path at) {
    this.at = at;
  }

  /** Mounts an empty one; where that is not permitted the test is left out. */
  static Medium mounted(Path parent, String size) throws IOException {
    Path folder = Files.createDirectory(parent.resolve("medium"));
    assumeTrue(
        ran("mount", "-t", "tmpfs", "-o", "size=" + size, "tmpfs", folder.toString()),
        "mounting a tmpfs needs Linux and its root");
    return new Medium(folder);
  }

  /** Makes one file read-only, its folder stays as it is. */
  static Medium readOnlyFile(Path file) {
    String name = file.toString();
    assumeTrue(ran("mount", "--bind", name, name), "mounting a file needs Linux and its root");
    Medium medium = new Medium(file);
    require("mount", "-o", "remount,bind,ro", name);
    return medium;
  }

  /** The folder or file. */
  Path path() {
    return at;
  }

  /** From now on nothing may be written to it. */
  void makeReadOnly() {
    require("mount", "-o", "remount,ro", at.toString());
  }

  /** Takes all room that is left. */
  void fill() throws IOException {
    leave(0);
  }

  /** Takes all room but some bytes. */
  void leave(int bytes) throws IOException {
    long room = Files.getFileStore(at).getUsableSpace();
    Files.write(at.resolve(FILLING), new byte[(int) (room - bytes)]);
  }

  /** Gives the room back. */
  void makeRoom() throws IOException {
    Files.delete(at.resolve(FILLING));
  }

  @Override
  public void close() {
    require("umount", at.toString());
  }

  private static void require(String... command) {
    if (!ran(command)) {
      throw new AssertionError("failed: " + List.of(command));
    }
  }

  private static boolean ran(String... command) {
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.to(new File("/dev/null")))
              .start();
      return process.waitFor(10, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
