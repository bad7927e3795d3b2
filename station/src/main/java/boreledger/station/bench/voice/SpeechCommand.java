package boreledger.station.bench.voice;

import boreledger.station.bench.words.Language;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A program that says a sentence and ends when it is said. No shell comes between: the sentence is
 * one argument, or the program's input.
 *
 * <p>Options are those of the programs' own manual pages; the voices' names on macOS are from
 * memory.
 *
 * @param arguments the program's path and its options
 * @param input whether the sentence is the program's input instead of its last argument
 */
record SpeechCommand(List<String> arguments, boolean input) {
  private static final String WINDOWS =
      "[Console]::InputEncoding = [Text.Encoding]::UTF8;"
          + " Add-Type -AssemblyName System.Speech;"
          + " $voice = New-Object System.Speech.Synthesis.SpeechSynthesizer;"
          + " $voice.SelectVoiceByHints('NotSet', 'NotSet', 0, '%s');"
          + " $voice.Speak([Console]::In.ReadToEnd())";

  SpeechCommand {
    arguments = List.copyOf(arguments);
  }

  /**
   * The program to use.
   *
   * @param system the system's name, such as {@code Linux}
   * @param folders where programs are looked for
   * @return empty when there is none
   */
  static Optional<SpeechCommand> find(String system, List<Path> folders, Language language) {
    String name = system.toLowerCase(Locale.ROOT);
    boolean german = language == Language.GERMAN;
    if (name.startsWith("windows")) {
      String script = String.format(Locale.ROOT, WINDOWS, german ? "de-DE" : "en-US");
      return of(
          folders, true, "powershell.exe", "-NoProfile", "-NonInteractive", "-Command", script);
    } else if (name.startsWith("mac")) {
      return of(folders, true, "say", "-v", german ? "Anna" : "Samantha", "-f", "-");
    }
    String tag = german ? "de" : "en";
    return Stream.of(
            of(folders, false, "spd-say", "--wait", "--language", tag, "--"),
            of(folders, true, "espeak-ng", "-v", tag, "--stdin"),
            of(folders, true, "espeak", "-v", tag, "--stdin"))
        .flatMap(Optional::stream)
        .findFirst();
  }

  /** What to start for a sentence. */
  List<String> toSay(String sentence) {
    return input ? arguments : Stream.concat(arguments.stream(), Stream.of(sentence)).toList();
  }

  private static Optional<SpeechCommand> of(
      List<Path> folders, boolean input, String program, String... options) {
    return folders.stream()
        .map(folder -> folder.resolve(program))
        .filter(Files::isExecutable)
        .findFirst()
        .map(
            file -> {
              List<String> arguments = new ArrayList<>(List.of(file.toString()));
              arguments.addAll(List.of(options));
              return new SpeechCommand(arguments, input);
            });
  }
}
