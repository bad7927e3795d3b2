package boreledger.station.job.draft;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Puts a job's text in its file so that at no time half of it stands there. */
public final class JobFileSaving {
  private static final String KEPT = ".before";

  private JobFileSaving() {}

  /**
   * Writes the text beside the file and moves it into its place.
   *
   * @param keepOld whether the file that stood there is kept as {@code NAME.before}, or {@code
   *     NAME.before-2} and so on where that is taken
   * @throws IOException if it cannot be written; the old file stands as it was then
   */
  public static void save(Path file, String text, boolean keepOld) throws IOException {
    // A link stays a link; what it leads to is written.
    Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
    Files.createDirectories(target.getParent());
    Path beside = target.resolveSibling("." + target.getFileName() + ".writing");
    try {
      write(beside, text);
      if (keepOld && Files.exists(target)) {
        Files.copy(target, kept(target), StandardCopyOption.COPY_ATTRIBUTES);
      }
      Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  /** Where the file that stands there now would be kept. */
  public static Path kept(Path file) {
    String name = file.getFileName() + KEPT;
    Path kept = file.resolveSibling(name);
    for (int number = 2; Files.exists(kept); number++) {
      kept = file.resolveSibling(name + "-" + number);
    }
    return kept;
  }

  private static void write(Path file, String text) throws IOException {
    Files.writeString(file, text, StandardCharsets.UTF_8);
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }
}
