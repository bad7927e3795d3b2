package boreledger.station.blackbox;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UsageIT {
  private final Launcher program = Launcher.quick();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "weigh",
        "figure weigh",
        "ports --loud",
        "replay",
        "capture --measure bore",
        "results",
        "figure gap-change --from 96.061,96.047",
        "figure gap-change --from 96.061 --to 96.020,96.012",
        "figure gap-change --from 96.061,wide --to 96.020,96.012",
        "figure gap-change --from 96.061,-96.047 --to 96.020,96.012",
        "figure gap-change --from 96.061,NaN --to 96.020,96.012",
        "figure tilt --bore 96 --depths 15.0@0,15.4@90",
        "figure tilt --bore 0 --depths 15.0@0,15.4@90,15.9@180",
        "figure tilt --bore 96 --depths 15.0@0,15.4@0,15.9@0",
        "figure tilt --bore 96 --depths 15.0,15.4,15.9"
      })
  void aCallThatCannotBeMeantIsRefusedInOneLine(String call) {
    program.run(call.split(" ")).refused(2);
  }

  @Test
  void anOptionTakesItsValueBehindABlankOrAnEqualsSign() {
    Outcome blank =
        program.run(
            "figure", "gap-change", "--json", "--from", "96.061,96.047", "--to", "96.020,96.012");
    Outcome equals =
        program.run("figure", "gap-change", "--json", "--from=96.061,96.047", "--to=96.020,96.012");
    assertEquals(blank.ended(0).stdout(), equals.ended(0).stdout());
  }

  @Test
  void aReplayTakesItsFilesInBothForms(@TempDir Path folder) {
    Bundle bundle =
        new Bundle(folder)
            .withSamples(
                "pumphouse-three.job.toml",
                "signed-decimal.gauge.toml",
                "bore-press.capture.jsonl");
    List<String> blank =
        bundle.replay("pumphouse-three.job.toml", List.of("bore-press.capture.jsonl"));
    List<String> equals = new ArrayList<>(List.of("replay", "--json"));
    equals.add("--job=" + bundle.path("pumphouse-three.job.toml"));
    equals.add("--capture=" + bundle.path("bore-press.capture.jsonl"));
    equals.add("--ledger=" + bundle.path("other.ledger"));
    assertEquals(
        program.run(blank).ended(1).json().path("cylinders"),
        program.run(equals).ended(1).json().path("cylinders"));
    assertEquals(
        new TreeSet<>(List.of("bench.ledger", "other.ledger")),
        bundle.names().stream()
            .filter(name -> name.endsWith(".ledger"))
            .collect(TreeSet::new, TreeSet::add, TreeSet::addAll));
  }

  @Test
  void portsAnswersWithOneDocument() {
    program.run("ports", "--json").ended(0).json();
    program.run("ports").ended(0);
  }
}
