package boreledger.station.bench.lesson;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.profile.Reads;
import boreledger.station.app.LearnedProfile;
import boreledger.station.bench.look.Surroundings;
import boreledger.station.bench.words.LessonText;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** A learned profile before it is a file: what bytes cannot tell is asked of the person. */
public final class KeepModel {
  private final Surroundings around;
  private final Consumer<Path> written;
  private final ReadOnlyObjectWrapper<LearnedProfile> profile = new ReadOnlyObjectWrapper<>();
  private final StringProperty name = new SimpleStringProperty("");
  private final ObjectProperty<Reads> reads = new SimpleObjectProperty<>(Reads.DEVIATION);
  private final StringProperty maxError = new SimpleStringProperty("");
  private final StringProperty file = new SimpleStringProperty("");
  private final ReadOnlyStringWrapper nameProblem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper maxErrorProblem = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper fileProblem = new ReadOnlyStringWrapper("");

  KeepModel(Surroundings around, Consumer<Path> written) {
    this.around = around;
    this.written = written;
  }

  /** What was learned for certain; null when nothing is. */
  void learned(String text) {
    profile.set(text == null ? null : new LearnedProfile(text));
  }

  /** Writes the profile; what is wrong with a field is told at it, and nothing is written then. */
  public void write() {
    nameProblem.set(name.get().isBlank() ? LessonText.NAME_MISSING.with() : "");
    maxErrorProblem.set(isError() ? "" : LessonText.MAX_ERROR_BAD.with(maxError.get().strip()));
    fileProblem.set(file.get().isBlank() ? LessonText.FILE_MISSING.with() : "");
    boolean isFine =
        nameProblem.get().isEmpty()
            && maxErrorProblem.get().isEmpty()
            && fileProblem.get().isEmpty();
    if (profile.get() == null || !isFine) {
      return;
    }
    LearnedProfile named = profile.get().named(name.get()).reading(reads.get());
    LearnedProfile whole =
        plainError().isEmpty() ? named : named.withMaxError(new BigDecimal(plainError()));
    String target = file.get().strip();
    around.background().execute(() -> write(whole, target));
  }

  /** What is written; null while nothing is certain. */
  public ReadOnlyObjectProperty<LearnedProfile> profile() {
    return profile.getReadOnlyProperty();
  }

  /** What the gauge is called. */
  public StringProperty name() {
    return name;
  }

  /** What it shows. */
  public ObjectProperty<Reads> reads() {
    return reads;
  }

  /** Its maximum permissible error in millimetres, as typed; empty when it is not known. */
  public StringProperty maxError() {
    return maxError;
  }

  /** The file, as typed or chosen. */
  public StringProperty file() {
    return file;
  }

  /** What is wrong with the name; empty when nothing is. */
  public ReadOnlyStringProperty nameProblem() {
    return nameProblem.getReadOnlyProperty();
  }

  /** What is wrong with the error; empty when nothing is. */
  public ReadOnlyStringProperty maxErrorProblem() {
    return maxErrorProblem.getReadOnlyProperty();
  }

  /** What is wrong with the file; empty when nothing is. */
  public ReadOnlyStringProperty fileProblem() {
    return fileProblem.getReadOnlyProperty();
  }

  private String plainError() {
    return maxError.get().replaceAll("mm|\\s", "").replace(',', '.');
  }

  private boolean isError() {
    return plainError().isEmpty()
        || plainError().matches("\\d{1,2}(\\.\\d{1,6})?")
            && new BigDecimal(plainError()).signum() > 0;
  }

  private void write(LearnedProfile whole, String target) {
    try {
      Path path = Path.of(target).toAbsolutePath().normalize();
      whole.write(path);
      around.screen().execute(() -> written.accept(path));
    } catch (FileAlreadyExistsException e) {
      tell(LessonText.FILE_THERE.with(target));
    } catch (NoSuchFileException e) {
      tell(LessonText.FILE_NO_FOLDER.with(target));
    } catch (AccessDeniedException e) {
      tell(LessonText.FILE_DENIED.with(target));
    } catch (InvalidPathException e) {
      tell(LessonText.NO_FILE.with(target));
    } catch (IOException | FileProblem e) {
      tell(LessonText.FILE_FAILED.with(String.valueOf(e.getMessage())));
    }
  }

  private void tell(String why) {
    around.screen().execute(() -> fileProblem.set(why));
  }
}
