package boreledger.station.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.drivers.file.FileProblem;
import boreledger.station.table.Tables;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobFilesTest {
  private static final String WHOLE =
      """
      format = "boreledger-job/1"
      name = "Pumphouse three"
      display_unit = "mm"

      [engine]
      cylinders = 3
      arrangement = "inline"
      nominal_bore_mm = 96.0
      stroke_mm = 104.0
      block_material = "grey-iron"

      [limits]
      bore_min_mm = 96.000
      bore_max_mm = 96.030
      wear_limit_mm = 96.150
      taper_max_mm = 0.050
      oversizes_mm = [0.50, 0.25]

      [plan]
      depths_mm = [60.0, 12.0]
      axes = ["thrust", "pin"]

      [setting]
      size_mm = 96.002
      expanded_uncertainty_mm = 0.001
      cte_per_k = 11.5e-6

      [[ring]]
      name = "top"
      material = "ductile-iron"
      travel_mm = [9.0, 113.0]
      gap_min_mm = 0.30
      gap_max_mm = 0.60
      target_mm = 0.52
      depths_mm = [12, 60]
      """;

  private final JobFiles files = new JobFiles(ownTables());

  private static Tables ownTables() {
    try {
      return Tables.of(List.of());
    } catch (FileProblem e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void aWholeJobIsReadAsWritten() throws Exception {
    Job job = files.parse("p.job.toml", WHOLE);

    assertEquals("Pumphouse three", job.name());
    assertEquals(3, job.engine().cylinders());
    // Callister & Rethwisch, Table B.6: grey irons.
    assertEquals(11.4e-6, job.engine().block().ctePerK());
    assertEquals(0.05, job.limits().taperMaxMm());
    assertNull(job.limits().outOfRoundMaxMm());
    assertEquals(List.of(0.25, 0.5), job.limits().oversizesMm());
    assertEquals(List.of("thrust", "pin"), job.plan().axes());
    assertEquals(0.52, job.ring("top").orElseThrow().targetMm());
    assertEquals(WHOLE, job.source().text());
  }

  @Test
  void depthsAreGaugedFromTheDeckDownHoweverTheyAreListed() throws Exception {
    assertEquals(List.of(12.0, 60.0), files.parse("p.job.toml", WHOLE).plan().depthsMm());
  }

  @Test
  void boresNearTheNominalReachFromHalfAMillimetreBelowToOneAboveTheLargestOversize()
      throws Exception {
    Job job = files.parse("p.job.toml", WHOLE);

    assertEquals(95.5, job.smallestBoreMm());
    assertEquals(97.5, job.largestBoreMm());
  }

  @Test
  void aCoefficientMayStandInTheMaterialsPlaceOrOverruleIt() throws Exception {
    Job instead =
        files.parse("p", WHOLE.replace("block_material = \"grey-iron\"", "cte_per_k = 1.2e-5"));
    Job overruled =
        files.parse(
            "p",
            WHOLE
                .replace("material = \"ductile-iron\"", "$0\ncte_per_k = 1e-5")
                .replace("$0", "material = \"ductile-iron\""));

    assertEquals(1.2e-5, instead.engine().block().ctePerK());
    assertEquals(1e-5, overruled.ring("top").orElseThrow().material().ctePerK());
    assertEquals("ductile-iron", overruled.ring("top").orElseThrow().material().name());
  }

  @Test
  void limitsMayBeLeftOutAltogether() throws Exception {
    String without = WHOLE.replaceAll("(?s)\\[limits].*?\\[plan]", "[plan]");

    assertEquals(List.of(), files.parse("p", without).limits().oversizesMm());
  }

  @Test
  void withoutRingsDepthsMayReachTwiceTheStroke() throws Exception {
    String bare = WHOLE.substring(0, WHOLE.indexOf("[[ring]]"));

    assertTrue(files.parse("p", bare.replace("12.0]", "208.0]")).rings().isEmpty());
    assertThrows(FileProblem.class, () -> files.parse("p", bare.replace("12.0]", "208.1]")));
  }

  @Test
  void everyOptionalKeyIsUnderstood() throws Exception {
    String more =
        WHOLE
                .replace(
                    "stroke_mm = 104.0",
                    "stroke_mm = 104.0\nliner_material = \"carbon-steel\"\n"
                        + "condition = \"torque-plate\"\nmain_caps = \"torqued\"")
                .replace(
                    "[plan]",
                    "clearance_min_mm = 0.04\nclearance_max_mm = 0.07\n"
                        + "honing_allowance_mm = 0.05\nout_of_round_max_mm = 0.03\n[plan]\n"
                        + "choke_mm = [0.0, 0.01]\nclock_deg = [0, 120, 240]")
                .replace("[setting]", "[setting]\nkind = \"micrometer\"\nmax_error_mm = 0.002")
            + """
            radial_wall_mm = 3.9

            [[piston]]
            cylinder = 2
            diameter_mm = 95.95

            [[ring_mark]]
            mark = "top-2"
            ring = "top"
            cylinder = 2

            [running]
            ring_temp_c = 220
            wall_top_temp_c = 180
            wall_bottom_temp_c = 120
            hot_margin_mm = 0.05

            [uncertainty]
            temperature_k = 0.3
            cte_per_k = 1e-6
            gauge_temperature_k = 1
            gauge_cte_per_k = 12e-6
            """;

    Job job = files.parse("p", more);

    assertEquals(11.7e-6, job.engine().bore().ctePerK());
    assertEquals(11.4e-6, job.engine().block().ctePerK());
    assertEquals(List.of(0.01, 0.0), job.plan().chokeMm(), "choke goes with its depth");
    assertEquals(List.of(0.0, 120.0, 240.0), job.plan().clockDeg());
    assertEquals(Setting.Kind.MICROMETER, job.setting().kind());
    assertEquals(new Piston(2, 95.95), job.pistons().get(0));
    assertEquals(new RingMark("top-2", "top", 2), job.ringMarks().get(0));
    assertEquals(new Running(220.0, 180.0, 120.0, 0.05), job.running());
    assertEquals(new InputUncertainty(0.3, 1e-6, 1, 12e-6), job.uncertainty());
    assertEquals(3.9, job.ring("top").orElseThrow().radialWallMm());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\u0000',
      value = {
        "taper_max_mm | taper_mx_mm | 16:1: unknown key taper_mx_mm in [limits], did you mean"
            + " taper_max_mm?",
        "nominal_bore_mm = 96.0 | nominal_bore_mm = -96.0 | 8:19: nominal_bore_mm is -96.0,"
            + " expected a number above 0",
        "taper_max_mm = 0.050 | taper_max_mm = 97 | 16:16: taper_max_mm is 97, expected 0 mm to"
            + " below the bore of 96.0 mm",
        "[60.0, 12.0] | [60.0, 113.5] | 20:20: item 2 of depths_mm is 113.5, expected at most"
            + " 113.0 mm, the lower end of every ring's travel",
        "[60.0, 12.0] | [-1, 12.0] | 20:14: item 1 of depths_mm is -1, expected a depth of 0 mm"
            + " or more below the deck",
        "target_mm = 0.52 | target_mm = 0.52\\nrule = \"plain\" | 28:1: [[ring]] has both rule and"
            + " target_mm, expected exactly one of them",
        "target_mm = 0.52 | # | 28:1: [[ring]] has neither rule nor target_mm, expected exactly"
            + " one of them",
        "stroke_mm = 104.0 | # | 5:1: missing stroke_mm in [engine], which is required",
        "cylinders = 3 | cylinders = \"three\" | 6:13: cylinders is \"three\", expected a whole"
            + " number from 1 to 64",
        "\"grey-iron\" | \"gray-iron\" | 10:18: block_material is \"gray-iron\", expected one of"
            + " grey-iron, ductile-iron, pearlitic-ductile-iron, carbon-steel, alloy-steel,"
            + " martensitic-stainless-steel, gauge-steel, cast-aluminium, wrought-aluminium,"
            + " hypereutectic-aluminium, or a cte_per_k",
        "block_material = \"grey-iron\" | # | 5:1: missing block_material, or cte_per_k in its"
            + " place",
        "bore_max_mm = 96.030 | bore_max_mm = 95.9 | 14:15: bore_max_mm is 95.9, expected at least"
            + " the 96.0 mm of bore_min_mm",
        "[9.0, 113.0] | [113.0, 9.0] | 31:13: travel_mm is [113.0, 9.0], expected two depths: at"
            + " top, then at bottom dead centre",
      })
  void whatCannotBeIsRefusedWithItsPlace(String from, String to, String message) {
    String text = WHOLE.replace(from, to.replace("\\n", "\n"));

    FileProblem problem = assertThrows(FileProblem.class, () -> files.parse("p.job.toml", text));

    assertEquals("p.job.toml:" + message, problem.getMessage());
  }
}
