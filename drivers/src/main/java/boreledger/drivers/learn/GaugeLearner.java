package boreledger.drivers.learn;

import boreledger.drivers.line.LineEvent;
import boreledger.drivers.profile.LineSettings;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Finds out what a gauge sends from what it sent while it showed known values.
 *
 * <ul>
 *   <li>The values are shown one after the other; each brings one frame or several equal ones.
 *   <li>Readings that differ only in how they cut frames, or in how far they extend a sign, are
 *       one.
 *   <li>It is certain only when exactly one reading fits, and nothing is unseen that could make it
 *       wrong: the sign of numbers in bytes, bits that could name the unit, enough different sizes.
 *   <li>Each candidate's profile has been tried on the real framer and decoder and gives all the
 *       values shown.
 * </ul>
 */
public final class GaugeLearner {
  private final List<LineEvent.Chunk> heard;
  private final List<ShownValue> shown;
  private final Optional<LineSettings> line;
  private final Trial trial;

  private GaugeLearner(
      List<LineEvent.Chunk> heard, List<ShownValue> shown, Optional<LineSettings> line) {
    this.heard = heard;
    this.shown = shown;
    this.line = line;
    trial = new Trial(heard, shown);
  }

  /**
   * Learns from what was heard.
   *
   * @param shown what the gauge showed, in order; not empty
   * @param line how the line was set; empty when only a recording is known
   */
  public static Learned learn(
      List<LineEvent.Chunk> heard, List<ShownValue> shown, Optional<LineSettings> line) {
    GaugeLearner learner = new GaugeLearner(heard, shown, line);
    List<Finding> findings = heard.isEmpty() ? List.of() : learner.findings();
    Verdict verdict = new Verdict(findings, shown);
    List<Candidate> candidates =
        findings.stream()
            .map(finding -> new Candidate(finding.words(), learner.profile(finding)))
            .toList();
    return new Learned(
        verdict.isCertain(), candidates, verdict.why(), verdict.next(), verdict.open());
  }

  private List<Finding> findings() {
    Cuts cuts = new Cuts(heard);
    List<Finding> found = List.of();
    if (cuts.isText()) {
      found = first(Stream.concat(cuts.lines().stream(), cuts.textBlocks().stream()), this::asText);
    }
    if (found.isEmpty()) {
      Stream<Cut> binary = Stream.concat(cuts.modbus().stream(), cuts.blocks().stream());
      found = first(binary, cut -> new BinaryFindings(cut, shown).all());
    }
    boolean exact = found.stream().anyMatch(Finding::exact);
    return found.stream().filter(finding -> finding.exact() || !exact).toList();
  }

  private List<Finding> asText(Cut cut) {
    return new TextFindings(cut, shown).all();
  }

  /** The findings of the first cut that has any: cuts that all fit are one reading. */
  private List<Finding> first(Stream<Cut> cuts, Function<Cut, List<Finding>> look) {
    return cuts.map(cut -> look.apply(cut).stream().filter(this::works).toList())
        .filter(found -> !found.isEmpty())
        .findFirst()
        .orElse(List.of());
  }

  private boolean works(Finding finding) {
    return trial.passes(profile(finding), finding.stepMm());
  }

  private String profile(Finding finding) {
    return ProfileDraft.of(finding, shown, line);
  }
}
