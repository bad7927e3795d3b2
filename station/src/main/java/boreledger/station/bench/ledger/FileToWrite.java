package boreledger.station.bench.ledger;

import boreledger.station.bench.words.LedgerText;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A file to write, as a person names it. */
final class FileToWrite {
  private final StringProperty typed = new SimpleStringProperty("");
  private final BooleanProperty replace = new SimpleBooleanProperty(false);

  StringProperty typed() {
    return typed;
  }

  /** Whether one that is there may be written over. */
  BooleanProperty replace() {
    return replace;
  }

  /** Proposes a name beside the ledger. */
  void propose(Path ledger, String name) {
    typed.set(ledger.toAbsolutePath().resolveSibling(name).toString());
  }

  /** Its path; empty when something stands in the way, which is told. */
  Optional<Path> path(Consumer<String> problem) {
    if (typed.get().isBlank()) {
      problem.accept(LedgerText.SHEET_NEEDS_FILE.with());
      return Optional.empty();
    }
    try {
      Path path = Path.of(typed.get().strip());
      if (replace.get() || !Files.exists(path)) {
        return Optional.of(path);
      }
      problem.accept(LedgerText.SHEET_THERE.with(path.toString()));
    } catch (InvalidPathException e) {
      problem.accept(LedgerText.SHEET_BAD_FILE.with(e.getMessage()));
    }
    return Optional.empty();
  }
}
