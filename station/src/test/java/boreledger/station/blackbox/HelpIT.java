package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HelpIT {
  private final Launcher program = Launcher.quick();

  /** Every command, with those of the groups {@code figure} and {@code gauge}. */
  static List<String> commands() {
    return List.of(
        "demo",
        "bench",
        "ports",
        "capture",
        "replay",
        "results",
        "report",
        "audit",
        "seal",
        "take-back",
        "export",
        "import",
        "backup",
        "restore",
        "compare",
        "figure gap-change",
        "figure tilt",
        "figure hot-gap",
        "figure target",
        "figure feelers",
        "figure go-no-go",
        "figure filing",
        "figure match",
        "figure gauge-study",
        "figure linearity",
        "figure stability",
        "figure oversize",
        "figure rock",
        "gauge check",
        "gauge learn");
  }

  @ParameterizedTest
  @MethodSource("commands")
  void eachCommandExplainsItselfWithAnExample(String command) {
    List<String> args = new ArrayList<>(List.of(command.split(" ")));
    args.add("--help");
    Outcome outcome = program.run(args).ended(0);
    int named = outcome.stdout().split("boreledger " + command, -1).length - 1;
    assertTrue(named >= 2, () -> "its usage and an example: " + outcome);
    assertTrue(outcome.stderr().isEmpty(), outcome::toString);
  }

  @Test
  void theProgramNamesItsCommands() {
    Outcome outcome = program.run("--help").ended(0);
    for (String command : commands()) {
      String name = command.split(" ")[0];
      assertTrue(outcome.stdout().contains(name), () -> name + " in " + outcome);
    }
  }
}
