package boreledger.station.bench.jobform;

import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.StrictToml;
import boreledger.drivers.file.TextFile;
import boreledger.station.bench.words.JobFormText;
import boreledger.station.bench.words.Text;
import boreledger.station.job.draft.Comments;
import boreledger.station.job.draft.JobFileSaving;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** Saves a draft's text, and asks before anything that a person may want back is replaced. */
final class FormSaving {
  private Path opened;
  private String openedText;

  /** What came of saving. */
  sealed interface Outcome {
    /** It is there. */
    record Saved(Path file) implements Outcome {}

    /** A person is to say whether it is to be saved all the same. */
    record Ask(String question, String detail, String yes) implements Outcome {}

    /** It could not be saved. */
    record Failed(String words) implements Outcome {}
  }

  /**
   * Begins with the file that was opened.
   *
   * @param file null for a new job
   * @param text what stood in it; null for a new job
   */
  FormSaving(Path file, String text) {
    opened = file;
    openedText = text;
  }

  /**
   * Saves, or asks.
   *
   * @param fileName as it was typed
   * @param isSure whether a person answered that it is to be saved all the same
   */
  Outcome save(String fileName, String text, boolean isSure) {
    if (fileName.isBlank()) {
      return new Outcome.Failed(JobFormText.FILE_MISSING.with());
    }
    try {
      Path file = Path.of(fileName.strip()).toAbsolutePath().normalize();
      return Files.isDirectory(file)
          ? new Outcome.Failed(JobFormText.FILE_IS_FOLDER.with(file.toString()))
          : save(file, text, isSure);
    } catch (InvalidPathException e) {
      return new Outcome.Failed(JobFormText.FILE_UNFIT.with(fileName));
    } catch (AccessDeniedException e) {
      return new Outcome.Failed(JobFormText.FILE_DENIED.with(fileName.strip()));
    } catch (FileProblem | IOException e) {
      return new Outcome.Failed(JobFormText.FILE_FAILED.with(e.toString()));
    }
  }

  /** The file that is named, if it can be one. */
  static Optional<Path> path(String fileName) {
    try {
      return fileName.isBlank() || Path.of(fileName.strip()).getFileName() == null
          ? Optional.empty()
          : Optional.of(Path.of(fileName.strip()).toAbsolutePath().normalize());
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private Outcome save(Path file, String text, boolean isSure) throws FileProblem, IOException {
    Text question = Files.exists(file) ? question(file) : null;
    if (question != null && !isSure) {
      String kept = JobFileSaving.kept(file).getFileName().toString();
      return new Outcome.Ask(
          question.with(file.getFileName().toString()),
          JobFormText.ASK_COMMENTS_DETAIL.with(kept),
          JobFormText.ASK_SAVE.with(kept));
    }
    JobFileSaving.save(file, text, question != null);
    opened = file;
    openedText = text;
    return new Outcome.Saved(file);
  }

  /** What there is to ask about a file that is there; null when there is nothing. */
  private Text question(Path file) throws FileProblem, IOException {
    boolean isOpened = opened != null && Files.exists(opened) && Files.isSameFile(opened, file);
    if (!isOpened) {
      return JobFormText.ASK_OTHER;
    }
    String now = TextFile.read(file, StrictToml.MAX_BYTES).text();
    if (!now.equals(openedText)) {
      return JobFormText.ASK_CHANGED;
    }
    return Comments.in(now) ? JobFormText.ASK_COMMENTS : null;
  }
}
