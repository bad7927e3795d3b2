package boreledger.station.bench;

import boreledger.station.bench.look.FileAsking;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.stage.Window;

/** A person who chooses one file in the system's window, or closes it; a note of what was asked. */
public final class ChosenFile implements FileAsking {
  /** What was asked for, in order. */
  public final List<Wish> asked = new ArrayList<>();

  /** The file that is chosen; null for none. */
  public Path chosen;

  /** Closes every window. */
  public ChosenFile() {}

  @Override
  public Optional<Path> toOpen(Wish wish, Window owner) {
    asked.add(wish);
    return Optional.ofNullable(chosen);
  }

  @Override
  public Optional<Path> toSave(Wish wish, Window owner) {
    return toOpen(wish, owner);
  }
}
