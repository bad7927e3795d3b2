package boreledger.station.report;

import boreledger.calc.gapping.GapRule;
import boreledger.station.job.Engine;
import boreledger.station.job.Job;
import boreledger.station.job.Ring;
import boreledger.station.job.Running;
import boreledger.station.results.JobResults.TableUsed;
import boreledger.station.table.Material;
import boreledger.station.table.UsualTemperatures;
import boreledger.station.wording.LengthFormat;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the figures rest on: rules, materials and temperatures with their origins, and the files.
 */
final class BasisSection {
  private static final String UNCERTAINTY =
      "Every number after ± is an expanded uncertainty for a level of confidence of 95 % (JCGM 100),"
          + " from the setting's certificate, the gauge's permissible error and resolution, the"
          + " temperatures, the drift of the zero and, where it was rocked, the repeatability of the"
          + " gauge. Figures are rounded to two significant digits of it. A verdict says within or"
          + " beyond only when the measurement can tell, and undecided between (ISO 14253-1). E_n"
          + " compares a gap read with the gap expected: from −1 to 1 they agree.";
  private static final List<Column> RULES =
      List.of(
          Column.words("Ring", 1.2),
          Column.words("Rule or target", 2.2),
          Column.words("Origin", 4.2),
          Column.words("Travel, depth", 1.6),
          Column.words("Maker's gap", 1.6));
  private static final List<Column> MATERIALS =
      List.of(
          Column.words("Material", 2),
          Column.words("Expansion", 1.6),
          Column.words("Used for", 3),
          Column.words("Origin", 4));
  private static final List<Column> FILES =
      List.of(Column.words("File", 3), Column.words("SHA-256 of its content", 7));

  private final SheetFacts facts;
  private final Typesetter type;
  private final LengthFormat lengths;

  BasisSection(SheetFacts facts, Typesetter type) {
    this.facts = facts;
    this.type = type;
    this.lengths = facts.lengths();
  }

  List<Piece> pieces() {
    Job job = facts.job();
    List<Piece> pieces = new ArrayList<>(type.heading("What these figures rest on"));
    pieces.addAll(type.paragraph(UNCERTAINTY));
    if (!job.rings().isEmpty()) {
      pieces.addAll(type.subheading("Rings and their targets"));
      pieces.addAll(type.table(RULES, job.rings().stream().map(this::rule).toList()));
      pieces.addAll(type.subheading("Running temperatures, for hot gaps"));
      pieces.addAll(type.paragraph(temperatures(job.running())));
    }
    pieces.addAll(type.subheading("Materials"));
    pieces.addAll(type.table(MATERIALS, materials(job)));
    pieces.addAll(type.subheading("Files, as the ledger keeps them"));
    pieces.addAll(type.table(FILES, files()));
    return pieces;
  }

  private List<String> rule(Ring ring) {
    Optional<GapRule> rule =
        Optional.ofNullable(ring.rule())
            .flatMap(use -> facts.tables().gapRules().rules().find(use, ring.kind().word()));
    String wanted =
        rule.map(this::words).orElseGet(() -> "target " + lengths.stated(ring.targetMm()));
    String origin =
        rule.map(each -> each.note().isEmpty() ? each.origin() : each.origin() + "; " + each.note())
            .orElse("the job's target_mm");
    return List.of(
        ring.name() + " (" + ring.kind().word() + ")",
        wanted,
        origin,
        lengths.depth(ring.travelTopMm()) + " to " + lengths.depth(ring.travelBottomMm()),
        lengths.stated(ring.gapMinMm()) + " to " + lengths.stated(ring.gapMaxMm()));
  }

  private String words(GapRule rule) {
    return rule.use()
        + (rule.verifyOnly()
            ? ", verified only"
            : ", " + BigDecimal.valueOf(rule.factor()).toPlainString() + " × bore");
  }

  private String temperatures(Running running) {
    UsualTemperatures usual = facts.tables().temperatures();
    return temperature("ring", running.ringTempC(), usual.ringTempC())
        + temperature(", wall at the top", running.wallTopTempC(), usual.wallTopTempC())
        + temperature(", wall at the bottom", running.wallBottomTempC(), usual.wallBottomTempC())
        + (running.hotMarginMm() == null
            ? "; no margin asked for"
            : "; margin wanted when hot: "
                + lengths.stated(running.hotMarginMm())
                + " "
                + lengths.symbol())
        + ".";
  }

  private String temperature(String name, Double given, double usual) {
    String origin = given == null ? facts.tables().temperatures().origin() : "the job";
    double tempC = given == null ? usual : given;
    return name + " " + BigDecimal.valueOf(tempC).toPlainString() + " °C (" + origin + ")";
  }

  private List<List<String>> materials(Job job) {
    Engine engine = job.engine();
    Set<Material> all = new LinkedHashSet<>(List.of(engine.block()));
    all.add(engine.bore());
    job.rings().forEach(ring -> all.add(ring.material()));
    return all.stream().map(material -> row(job, material)).toList();
  }

  private static List<String> row(Job job, Material material) {
    List<String> uses = new ArrayList<>();
    if (material.equals(job.engine().block())) {
      uses.add("block");
    }
    if (material.equals(job.engine().bore())) {
      uses.add("bore's wall");
    }
    job.rings().stream()
        .filter(ring -> ring.material().equals(material))
        .forEach(ring -> uses.add(ring.name() + " ring"));
    return List.of(
        material.name() == null ? "not named" : material.name(),
        HeadSection.expansion(material.ctePerK()),
        String.join(", ", uses),
        material.origin());
  }

  private List<List<String>> files() {
    Set<List<String>> rows = new LinkedHashSet<>();
    rows.add(List.of(facts.job().source().fileName(), facts.job().source().sha256()));
    facts.results().gauges().forEach(use -> rows.add(List.of(use.gauge(), use.profile())));
    for (TableUsed table : facts.results().tables()) {
      rows.add(List.of(table.file(), table.sha256()));
    }
    return List.copyOf(rows);
  }
}
