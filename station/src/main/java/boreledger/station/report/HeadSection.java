package boreledger.station.report;

import boreledger.station.drawing.BlockFigure;
import boreledger.station.job.Engine;
import boreledger.station.job.GaugingOrder;
import boreledger.station.job.Limits;
import boreledger.station.job.Setting;
import boreledger.station.report.Typesetter.Fact;
import boreledger.station.results.GaugeUse;
import boreledger.station.table.Material;
import boreledger.station.wording.LengthFormat;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What the sheet is about: the job, the ledger it comes from, the engine and its picture. */
final class HeadSection {
  private static final double CODE = 92;
  private static final double BLOCK_SHARE = 0.4;
  private static final double BLOCK_HEIGHT = 108;
  private static final double LONGEST_BESIDE = 4;
  private static final double NAME_SHARE = 0.25;
  private static final double NARROW_NAME_SHARE = 0.15;

  private final SheetFacts facts;
  private final Typesetter type;
  private final LengthFormat lengths;

  HeadSection(SheetFacts facts, Typesetter type) {
    this.facts = facts;
    this.type = type;
    this.lengths = facts.lengths();
  }

  List<Piece> pieces() {
    double words = type.width() - CODE - 8;
    Typesetter narrow = type.within(words);
    String head = facts.results().ledgerHead();
    List<Piece> named =
        Piece.join(
            List.of(
                narrow.paragraph("Build sheet"),
                narrow.title(facts.job().name()),
                List.of(Piece.space(3)),
                narrow.paragraph(made()),
                List.of(Piece.space(3)),
                narrow.small("Ledger head, also in the code at the right:"),
                narrow.small(head),
                facts.seal() == null ? List.of() : narrow.small("Seal: " + facts.seal())));
    Piece code = type.within(CODE).figure(new HeadCode(head), CODE, Typesetter.SMALL);
    List<Piece> pieces = new ArrayList<>();
    pieces.add(type.side(Piece.stacked(named), words + 8, code));
    pieces.add(Piece.space(6));
    pieces.addAll(engineAndBlock());
    return pieces;
  }

  /** Beside each other, unless the block is too long for that. */
  private List<Piece> engineAndBlock() {
    BlockFigure figure = BlockFigure.of(facts.results(), facts.job().engine().arrangement());
    if (figure.columns() > LONGEST_BESIDE) {
      List<Piece> pieces = new ArrayList<>(type.facts(NARROW_NAME_SHARE, engine()));
      pieces.add(Piece.space(6));
      pieces.add(type.figure(figure, BLOCK_HEIGHT, Typesetter.SMALL));
      return pieces;
    }
    double rightAt = (1 - BLOCK_SHARE) * type.width();
    Piece engine = Piece.stacked(type.within(rightAt - 12).facts(NAME_SHARE, engine()));
    Piece block =
        type.within(type.width() - rightAt).figure(figure, BLOCK_HEIGHT, Typesetter.SMALL);
    return List.of(type.side(engine, rightAt, block));
  }

  private String made() {
    String gauged =
        facts.results().gauges().stream()
            .map(GaugeUse::started)
            .map(started -> Times.minute(started).substring(0, 10))
            .distinct()
            .sorted()
            .collect(Collectors.joining(", "));
    return "Gauged "
        + gauged
        + ". Sheet made "
        + Times.minute(facts.made())
        + (facts.by() == null ? "" : " by " + facts.by())
        + ", boreledger "
        + facts.program()
        + ". Lengths in "
        + lengths.symbol()
        + ".";
  }

  private List<Fact> engine() {
    Engine engine = facts.job().engine();
    GaugingOrder plan = facts.job().plan();
    List<Fact> all = new ArrayList<>();
    all.add(
        new Fact(
            "Engine",
            engine.cylinders()
                + " cylinders, "
                + engine.arrangement().name().toLowerCase(Locale.ROOT)));
    all.add(
        new Fact(
            "Bore, stroke",
            lengths.depth(engine.nominalBoreMm())
                + " × "
                + lengths.depth(engine.strokeMm())
                + " "
                + lengths.symbol()
                + " nominal"));
    all.add(new Fact("Block", material(engine.block())));
    if (!engine.bore().equals(engine.block())) {
      all.add(new Fact("Bore's wall", material(engine.bore())));
    }
    all.add(new Fact("Limits", limits(facts.job().limits())));
    all.add(new Fact("Set on", setting(facts.job().setting())));
    all.add(
        new Fact(
            "Gauged at",
            depths(plan.depthsMm()) + " below the deck; axes " + String.join(", ", plan.axes())));
    return all;
  }

  private String depths(List<Double> depthsMm) {
    return depthsMm.stream().map(lengths::depth).collect(Collectors.joining(", "))
        + " "
        + lengths.symbol();
  }

  private String limits(Limits limits) {
    List<String> words = new ArrayList<>();
    limit(words, "bore at least ", limits.boreMinMm());
    limit(words, "bore at most ", limits.boreMaxMm());
    limit(words, "wear limit ", limits.wearLimitMm());
    limit(words, "taper at most ", limits.taperMaxMm());
    limit(words, "out of round at most ", limits.outOfRoundMaxMm());
    limit(words, "piston clearance at least ", limits.clearanceMinMm());
    limit(words, "piston clearance at most ", limits.clearanceMaxMm());
    return words.isEmpty() ? "the job gives none" : String.join(", ", words);
  }

  private void limit(List<String> words, String name, Double mm) {
    if (mm != null) {
      words.add(name + lengths.stated(mm));
    }
  }

  private String setting(Setting setting) {
    String kind = setting.kind() == Setting.Kind.RING ? "setting ring" : "micrometer";
    return kind
        + ", "
        + lengths.stated(setting.sizeMm())
        + " ± "
        + lengths.stated(setting.expandedUncertaintyMm())
        + " "
        + lengths.symbol()
        + ", "
        + expansion(setting.ctePerK());
  }

  private static String material(Material material) {
    String name = material.name() == null ? "" : material.name() + ", ";
    return name + expansion(material.ctePerK());
  }

  static String expansion(double ctePerK) {
    return BigDecimal.valueOf(ctePerK).movePointRight(6).stripTrailingZeros().toPlainString()
        + " µm/(m K)";
  }
}
