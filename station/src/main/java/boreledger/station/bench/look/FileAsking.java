package boreledger.station.bench.look;

import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.Window;

/** How a person is asked for a file: by the system's own window, or by a test. */
public interface FileAsking {
  /**
   * What is asked for.
   *
   * @param title what stands over the window
   * @param folder where it opens; one that is not there counts as its nearest parent that is
   * @param name the name that is offered; empty for none
   * @param kind what files of the ending are called
   * @param ending such as {@code .job.toml}
   */
  record Wish(String title, Path folder, String name, String kind, String ending) {}

  /** A file that is there; empty when the person changed their mind. */
  Optional<Path> toOpen(Wish wish, Window owner);

  /** A file to write, which may be there already; empty when the person changed their mind. */
  Optional<Path> toSave(Wish wish, Window owner);
}
