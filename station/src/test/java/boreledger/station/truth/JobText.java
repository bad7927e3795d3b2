package boreledger.station.truth;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes an engine's job file. */
public final class JobText {
  private final StringBuilder text = new StringBuilder();

  private JobText() {}

  /**
   * The job file of an engine.
   *
   * @param comment lines to stand above it, each beginning with #
   */
  public static String of(Engine engine, String comment) {
    JobText job = new JobText();
    job.text.append(comment);
    job.top(engine);
    job.limits(engine.limits());
    job.plan(engine);
    job.setting(engine);
    engine.rings().forEach(job::ring);
    if (engine.running() != null) {
      job.running(engine.running());
    }
    return job.text.toString();
  }

  private void top(Engine engine) {
    key("format", quoted("boreledger-job/1"));
    key("name", quoted(engine.name()));
    key("display_unit", quoted("mm"));
    table("[engine]");
    key("cylinders", Integer.toString(engine.bores().size()));
    key("arrangement", quoted("inline"));
    key("nominal_bore_mm", number(engine.nominalMm()));
    key("stroke_mm", number(engine.strokeMm()));
    key("block_material", quoted("grey-iron"));
    key("cte_per_k", cte(engine.bench().blockCtePerK()));
  }

  private void limits(Map<String, String> limits) {
    table("[limits]");
    limits.forEach(this::key);
  }

  private void plan(Engine engine) {
    table("[plan]");
    key("depths_mm", numbers(engine.depthsMm()));
    key(
        "axes",
        engine.axes().stream()
            .map(axis -> quoted(axis.label()))
            .collect(Collectors.joining(", ", "[", "]")));
  }

  private void setting(Engine engine) {
    table("[setting]");
    key("size_mm", engine.bench().settingSizeMm().toPlainString());
    key("expanded_uncertainty_mm", engine.settingUncertaintyMm().toPlainString());
    key("cte_per_k", cte(engine.bench().settingCtePerK()));
  }

  private void ring(RingKind ring) {
    table("[[ring]]");
    key("name", quoted(ring.name()));
    if (ring.material() != null) {
      key("material", quoted(ring.material()));
    }
    key("cte_per_k", cte(ring.ctePerK()));
    key("travel_mm", numbers(List.of(ring.travelTopMm(), ring.travelBottomMm())));
    key("gap_min_mm", number(ring.gapMinMm()));
    key("gap_max_mm", number(ring.gapMaxMm()));
    if (ring.rule() == null) {
      key("target_mm", number(ring.targetMm()));
    } else {
      key("rule", quoted(ring.rule()));
    }
    key("depths_mm", numbers(ring.depthsMm()));
  }

  private void running(Running running) {
    table("[running]");
    key("ring_temp_c", number(running.ringTempC()));
    key("wall_top_temp_c", number(running.wallTopTempC()));
    key("wall_bottom_temp_c", number(running.wallBottomTempC()));
    key("hot_margin_mm", number(running.hotMarginMm()));
  }

  private void table(String name) {
    text.append('\n').append(name).append('\n');
  }

  private void key(String key, String value) {
    text.append(key).append(" = ").append(value).append('\n');
  }

  private static String quoted(String words) {
    return '"' + words + '"';
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).toPlainString();
  }

  private static String numbers(List<Double> values) {
    return values.stream().map(JobText::number).collect(Collectors.joining(", ", "[", "]"));
  }

  private static String cte(BigDecimal perK) {
    return perK.movePointRight(6).toPlainString() + "e-6";
  }
}
