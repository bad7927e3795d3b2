package boreledger.station.bench.look;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks for files by the system's own window. */
public final class FileWindows implements FileAsking {
  /** Asks whenever it is told to. */
  public FileWindows() {}

  @Override
  public Optional<Path> toOpen(Wish wish, Window owner) {
    return path(chooser(wish).showOpenDialog(owner));
  }

  @Override
  public Optional<Path> toSave(Wish wish, Window owner) {
    Optional<Path> chosen = path(chooser(wish).showSaveDialog(owner));
    // Some systems add the ending of the kind chosen, others leave the name as it was typed.
    return chosen.map(file -> withEnding(file, wish.ending()));
  }

  /** The nearest folder that is there, as windows refuse to open in any other. */
  static Optional<Path> nearest(Path folder) {
    Path at = folder.toAbsolutePath();
    while (at != null && !Files.isDirectory(at)) {
      at = at.getParent();
    }
    return Optional.ofNullable(at);
  }

  /** The file with its ending, added where none of its letters stands there. */
  static Path withEnding(Path file, String ending) {
    String name = file.getFileName().toString();
    return name.contains(".") ? file : file.resolveSibling(name + ending);
  }

  private static FileChooser chooser(Wish wish) {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(wish.title());
    nearest(wish.folder()).map(Path::toFile).ifPresent(chooser::setInitialDirectory);
    chooser.setInitialFileName(wish.name());
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(wish.kind(), "*" + wish.ending()));
    return chooser;
  }

  private static Optional<Path> path(File chosen) {
    return Optional.ofNullable(chosen).map(File::toPath);
  }
}
