package boreledger.station.bench.gaps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import boreledger.station.bench.House;
import boreledger.station.bench.findings.Finding;
import boreledger.station.bench.findings.Findings;
import boreledger.station.bench.gaps.Supposing.Part;
import boreledger.station.bench.memory.Memory;
import boreledger.station.job.Ring;
import boreledger.station.results.JobResults;
import boreledger.station.results.RingResults.TightestResult;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What would be left when hot if the engine ran otherwise. */
class SupposingTest {
  @TempDir Path folder;
  private Findings findings;
  private GapsModel model;
  private Supposing supposing;

  @BeforeEach
  void gauge() throws Exception {
    House house = House.gauged(folder, "bore-rocked", "gap-top");
    findings = new Findings(house.around());
    model = new GapsModel(findings, house.around(), new Memory(null), house::filing);
    findings.want();
    supposing = model.supposing();
  }

  @Test
  void aHotterRingLeavesLessByItsOwnExpansion() {
    double asItIsC = Double.parseDouble(Supposing.holding(found(), Part.RING));
    TightestResult asItIs = tightest(found().asItIs());
    Ring ring = found().job().ring("top").orElseThrow();

    supposing.typed(Part.RING).set(Double.toString(asItIsC + 40));
    supposing.suppose();

    // Linear expansion, l alpha dT (any table book of mechanics), of a ring about as long as the
    // perimeter of its bore.
    double lengthMm = Math.PI * 96.05 - asItIs.gapMm();
    double growthMm = lengthMm * ring.material().ctePerK() * 40;
    assertEquals(asItIs.hotGapMm() - growthMm, tightest(found().results()).hotGapMm(), 3e-4);
    assertEquals(asItIs, tightest(found().asItIs()));
  }

  @Test
  void aHotterWallLeavesMore() {
    supposing.typed(Part.WALL_TOP).set("180 °C");
    supposing.typed(Part.WALL_BOTTOM).set("180");
    supposing.suppose();

    assertTrue(tightest(found().results()).hotGapMm() > tightest(found().asItIs()).hotGapMm());
  }

  @Test
  void eachTemperatureTellsItsOrigin() {
    supposing.typed(Part.RING).set("300");
    supposing.suppose();

    String origin = tightest(found().results()).temperaturesOrigin();
    assertTrue(origin.startsWith("ring 300 °C (supposed), wall at the top "), origin);
    String usual = found().sessions().tables().temperatures().origin();
    assertTrue(Supposing.origins(found()).contains(usual) || origin.contains("(the job)"), origin);
    assertTrue(
        model.page().get().supposed().matches("Hot at the tightest: .* supposed, .* as it is."));
    assertTrue(
        model.page().get().facts().stream().anyMatch(fact -> fact.contains("(supposed)")),
        model.page().get().facts()::toString);
  }

  @Test
  void aRingSoHotThatItsEndsButtIsACautionThatSaysItIsSupposed() {
    supposing.typed(Part.RING).set("900");
    supposing.suppose();

    assertTrue(
        model.page().get().cautions().stream()
            .anyMatch(each -> each.contains("ends would butt") && each.contains("(supposed)")),
        model.page().get().cautions()::toString);
  }

  @Test
  void whatIsNoTemperatureIsToldAndNothingIsSupposed() {
    for (String typed : new String[] {"hot", "2000", "-300", "200 K"}) {
      supposing.typed(Part.WALL_TOP).set(typed);
      supposing.suppose();

      assertTrue(supposing.problem().get().contains(typed), supposing.problem().get());
      assertFalse(supposing.isSupposed());
    }
  }

  @Test
  void backToAsItIsForgetsUseAndTemperatures() {
    supposing.typed(Part.RING).set("300");
    supposing.use().set(found().sessions().tables().gapRules().uses().keySet().iterator().next());
    assertTrue(supposing.isSupposed());

    supposing.asItIs();

    assertFalse(supposing.isSupposed());
    assertEquals(found().asItIs(), found().results());
    assertEquals("", supposing.typed(Part.RING).get());
    assertEquals("", model.page().get().supposed());
  }

  private Finding found() {
    return findings.latest().get();
  }

  private static TightestResult tightest(JobResults results) {
    return results.cylinders().get(0).rings().get(0).tightest();
  }
}
