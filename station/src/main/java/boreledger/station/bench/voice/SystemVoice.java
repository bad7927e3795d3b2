package boreledger.station.bench.voice;

import boreledger.station.bench.words.Language;
import boreledger.station.bench.words.WindowText;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Speaks through a program of the system, in the language that the window speaks. A thread of its
 * own starts one program after the other; while one speaks, only the latest sentence waits. What
 * keeps it from speaking is told once.
 */
public final class SystemVoice implements Voice, AutoCloseable {
  private static final long LONGEST_S = 30;

  private final String system;
  private final List<Path> folders;
  private final Consumer<String> failed;
  private final AtomicBoolean told = new AtomicBoolean();
  private final ThreadPoolExecutor speaker =
      new ThreadPoolExecutor(
          0,
          1,
          5,
          TimeUnit.SECONDS,
          new ArrayBlockingQueue<>(1),
          SystemVoice::thread,
          new ThreadPoolExecutor.DiscardOldestPolicy());

  /**
   * A voice that looks for its program when it is to speak.
   *
   * @param system the system's name, such as {@code Linux}
   * @param folders where programs are looked for
   * @param failed told once, from the voice's thread, in one sentence without its full stop
   */
  SystemVoice(String system, List<Path> folders, Consumer<String> failed) {
    this.system = system;
    this.folders = List.copyOf(folders);
    this.failed = failed;
  }

  /**
   * The voice of this machine.
   *
   * @param failed told once, from another thread, why it cannot speak
   */
  public static SystemVoice here(Consumer<String> failed) {
    String path = Objects.requireNonNullElse(System.getenv("PATH"), "");
    return new SystemVoice(System.getProperty("os.name"), folders(path), failed);
  }

  @Override
  public void say(String sentence) {
    speaker.execute(() -> speak(sentence));
  }

  /** Falls silent: what is being said is cut off. */
  @Override
  public void close() {
    speaker.shutdownNow();
  }

  private void speak(String sentence) {
    Optional<SpeechCommand> command = SpeechCommand.find(system, folders, Language.spoken());
    if (command.isEmpty()) {
      tell(WindowText.VOICE_NONE.with());
      return;
    }
    try {
      run(command.get(), sentence);
    } catch (IOException e) {
      tell(WindowText.VOICE_FAILED.with(program(command.get()), String.valueOf(e.getMessage())));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void run(SpeechCommand command, String sentence)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder(command.toSay(sentence))
            .redirectOutput(Redirect.DISCARD)
            .redirectError(Redirect.DISCARD)
            .start();
    try {
      try (OutputStream input = process.getOutputStream()) {
        if (command.input()) {
          input.write(sentence.getBytes(StandardCharsets.UTF_8));
        }
      }
      if (!process.waitFor(LONGEST_S, TimeUnit.SECONDS)) {
        tell(WindowText.VOICE_LONG.with(program(command), Long.toString(LONGEST_S)));
      } else if (process.exitValue() != 0) {
        tell(WindowText.VOICE_STATUS.with(program(command), Integer.toString(process.exitValue())));
      }
    } finally {
      process.destroy();
    }
  }

  private void tell(String why) {
    if (told.compareAndSet(false, true)) {
      failed.accept(why);
    }
  }

  private static String program(SpeechCommand command) {
    return command.arguments().get(0);
  }

  private static List<Path> folders(String path) {
    return Stream.of(path.split(File.pathSeparator))
        .filter(each -> !each.isBlank())
        .flatMap(SystemVoice::folder)
        .toList();
  }

  private static Stream<Path> folder(String name) {
    try {
      return Stream.of(Path.of(name));
    } catch (InvalidPathException e) {
      // An entry that names no folder holds no program.
      return Stream.empty();
    }
  }

  private static Thread thread(Runnable task) {
    Thread thread = new Thread(task, "bench voice");
    thread.setDaemon(true);
    return thread;
  }
}
