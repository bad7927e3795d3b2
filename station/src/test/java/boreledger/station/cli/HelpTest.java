package boreledger.station.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HelpTest {
  private static final Pattern LISTED = Pattern.compile("(?m)^  ([a-z-]+)  ");
  private static final Pattern EXAMPLE =
      Pattern.compile("Example: (boreledger [^\\r\\n]*(?:\\R  [^\\r\\n]*)*)");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  /** Every command that the helps list, from the program's own downward. */
  static Stream<String> commands() {
    List<String> found = new ArrayList<>();
    walk("", found);
    return found.stream();
  }

  /** Those whose example can be tried without opening a window or writing a ledger. */
  static Stream<String> harmlessCommands() {
    return commands().filter(command -> !List.of("", "bench", "demo").contains(command));
  }

  @Test
  void theWalkSeesTheCommands() {
    List<String> all = commands().toList();

    assertTrue(
        all.containsAll(
            List.of(
                "",
                "bench",
                "capture",
                "demo",
                "figure",
                "figure gap-change",
                "figure tilt",
                "gauge",
                "gauge check",
                "gauge learn",
                "ports",
                "replay",
                "report",
                "results")),
        all::toString);
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandExplainsItselfWithAnExampleOfItself(String command) {
    Ran help = help(command, "--help");

    assertEquals("", help.err());
    assertTrue(help.out().startsWith("Usage: boreledger " + command), help::toString);
    assertTrue(example(command).startsWith("boreledger " + command), help::toString);
  }

  @ParameterizedTest
  @MethodSource("commands")
  void theShortFormSaysTheSame(String command) {
    assertEquals(help(command, "--help"), help(command, "-h"));
  }

  @ParameterizedTest
  @MethodSource("harmlessCommands")
  void everyExampleIsACallThatTheCommandTakes(String command) {
    List<Object> words = new ArrayList<>();
    Matcher word = WORD.matcher(example(command));
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }

    Ran tried = Ran.command(words.subList(1, words.size()).toArray());

    // Its files are not there; but a call that was not understood points to the help.
    assertFalse(tried.err().contains("--help"), tried::toString);
  }

  @Test
  void theVersionIsToldInOneLine() {
    Ran version = Ran.command("--version").ended(0);

    assertTrue(version.out().strip().matches("boreledger \\d+\\.\\d+\\.\\d+"), version::toString);
  }

  private static void walk(String command, List<String> found) {
    found.add(command);
    String help = help(command, "--help").out();
    int list = help.indexOf("Commands:");
    if (list < 0) {
      return;
    }
    Matcher listed = LISTED.matcher(help.substring(list));
    while (listed.find()) {
      // The command line library's own command only repeats what --help says.
      if (!listed.group(1).equals("help")) {
        walk((command + " " + listed.group(1)).strip(), found);
      }
    }
  }

  private static Ran help(String command, String option) {
    Stream<String> words = command.isEmpty() ? Stream.of() : Stream.of(command.split(" "));
    return Ran.command(Stream.concat(words, Stream.of(option)).toArray()).ended(0);
  }

  private static String example(String command) {
    String help = help(command, "--help").out();
    Matcher example = EXAMPLE.matcher(help);
    assertTrue(example.find(), help);
    return example.group(1);
  }
}
