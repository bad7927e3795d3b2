package boreledger.station.keeping;

import boreledger.drivers.file.FileProblem;
import boreledger.station.app.UsageProblem;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.CopyOption;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/** A file that appears whole or not at all: it is written beside its place and then moved there. */
final class FreshFile implements AutoCloseable {
  private final Path target;
  private final boolean replace;
  private final Path draft;

  private FreshFile(Path target, boolean replace, Path draft) {
    this.target = target;
    this.replace = replace;
    this.draft = draft;
  }

  /**
   * A file that is to appear.
   *
   * @param replace whether one that stands there may be overwritten
   * @param never a file that it must not be, such as the ledger it is made from
   */
  static FreshFile at(Path target, boolean replace, Path never) throws UsageProblem, FileProblem {
    if (Files.isDirectory(target)) {
      throw new UsageProblem(target + ": is a folder; name a file in it");
    }
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new UsageProblem(target + ": its folder is not there; make it first");
    }
    if (isSame(target, never)) {
      throw new UsageProblem(target + ": is the file that is read; name another one");
    }
    if (!replace && Files.exists(target)) {
      throw exists(target);
    }
    String name = "." + target.getFileName() + "." + UUID.randomUUID() + ".part";
    return new FreshFile(target, replace, folder.resolve(name));
  }

  /** Where it is written meanwhile; nothing stands there yet. */
  Path draft() {
    return draft;
  }

  /** Opens the draft for text in UTF-8. */
  BufferedWriter writer() throws FileProblem {
    try {
      return Files.newBufferedWriter(draft, StandardOpenOption.CREATE_NEW);
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  /** Lets it appear; what was written is on the disk by then. */
  void put() throws FileProblem, UsageProblem {
    try (FileChannel channel = FileChannel.open(draft, StandardOpenOption.WRITE)) {
      channel.force(true);
    } catch (IOException e) {
      throw unwritable(e);
    }
    try {
      if (replace) {
        move(StandardCopyOption.ATOMIC_MOVE);
      } else {
        move();
      }
    } catch (FileAlreadyExistsException e) {
      throw exists(target);
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  /** The problem that it could not be written. */
  FileProblem unwritable(IOException cause) {
    return FileProblem.of(target.toString(), "could not be written: " + cause.getMessage(), cause);
  }

  @Override
  public void close() {
    try {
      Files.deleteIfExists(draft);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void move(CopyOption... options) throws IOException {
    try {
      Files.move(draft, target, options);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static UsageProblem exists(Path target) {
    return new UsageProblem(
        target + ": is there already; name another file, or overwrite it with --replace");
  }

  private static boolean isSame(Path target, Path never) throws FileProblem {
    try {
      return Files.exists(target) && Files.exists(never) && Files.isSameFile(target, never);
    } catch (IOException e) {
      throw FileProblem.of(target.toString(), "could not be looked at: " + e.getMessage(), e);
    }
  }
}
