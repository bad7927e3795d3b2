package boreledger.drivers.learn;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.LengthUnit;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Readings of frames as text: which of the numbers in it is the value. */
final class TextFindings {
  private static final int TELLING_DECIMALS = 2;

  private final Cut cut;
  private final List<ShownValue> shown;
  private final List<String> lines;

  TextFindings(Cut cut, List<ShownValue> shown) {
    this.cut = cut;
    this.shown = shown;
    lines = cut.frames().stream().map(cut::payload).map(TextFindings::text).toList();
  }

  /** The readings that give every value shown. */
  List<Finding> all() {
    for (char point : new char[] {'.', ','}) {
      List<List<TextToken>> tokens = lines.stream().map(line -> TextToken.in(line, point)).toList();
      List<Finding> findings = new ArrayList<>();
      int least = tokens.stream().mapToInt(List::size).min().orElse(0);
      for (int i = 0; i < least; i++) {
        int index = i;
        reading(tokens.stream().map(line -> line.get(index)).toList(), findings);
      }
      if (!findings.isEmpty()) {
        return findings;
      }
    }
    return List.of();
  }

  /** A sign that is a word is looked for only where a negative value was shown and is missed. */
  private void reading(List<TextToken> tokens, List<Finding> findings) {
    int before = findings.size();
    reading(tokens, null, findings);
    if (findings.size() == before && shown.stream().anyMatch(each -> each.mm().signum() < 0)) {
      SignWord.in(tokens).forEach(each -> reading(each.tokens(), each.word(), findings));
    }
  }

  private void reading(List<TextToken> tokens, SignWord word, List<Finding> findings) {
    List<ShownValue> aligned = Runs.align(tokens.stream().map(TextToken::number).toList(), shown);
    if (aligned.isEmpty() || mixed(tokens)) {
      return;
    }
    TextPattern pattern = new TextPattern(tokens, word);
    if (!pattern.tellsSign()) {
      return;
    }
    for (LengthUnit unnamed : LengthUnit.values()) {
      if (fits(tokens, aligned, unnamed)) {
        findings.add(finding(tokens, pattern, aligned, unnamed));
        return;
      }
    }
  }

  /** Whether some frames have a unit word, a point, or their sign, where others have not. */
  private static boolean mixed(List<TextToken> tokens) {
    long units =
        tokens.stream().map(t -> t.unit().isEmpty() ? 0 : t.unitFirst() ? 1 : 2).distinct().count();
    long points = tokens.stream().map(token -> token.decimals() < 0).distinct().count();
    boolean signsBehind = tokens.stream().anyMatch(TextToken::signAfter);
    boolean signsAhead = tokens.stream().anyMatch(TextToken::signAhead);
    return units > 1 || points > 1 || signsBehind && signsAhead;
  }

  private static boolean fits(
      List<TextToken> tokens, List<ShownValue> aligned, LengthUnit unnamed) {
    for (int i = 0; i < tokens.size(); i++) {
      TextToken token = tokens.get(i);
      LengthUnit unit = token.unitOr(unnamed);
      BigDecimal valueMm = unit.toMm(token.number());
      boolean fine = token.decimals() >= TELLING_DECIMALS;
      boolean same =
          fine
              ? aligned.get(i).isShownFor(valueMm, unit.toMm(token.step()))
              : valueMm.compareTo(aligned.get(i).mm()) == 0;
      if (!same) {
        return false;
      }
    }
    return true;
  }

  private Finding finding(
      List<TextToken> tokens, TextPattern pattern, List<ShownValue> aligned, LengthUnit unnamed) {
    boolean exact = true;
    BigDecimal stepMm = BigDecimal.ZERO;
    for (int i = 0; i < tokens.size(); i++) {
      TextToken token = tokens.get(i);
      LengthUnit unit = token.unitOr(unnamed);
      stepMm = stepMm.max(unit.toMm(token.step()));
      exact &= unit.toMm(token.number()).compareTo(aligned.get(i).mm()) == 0;
    }
    return new Finding(
        pattern.words(),
        cut,
        List.of("pattern = '" + pattern.regex() + "'"),
        unnamed,
        stepMm,
        CheckFound.in(cut.frames()).orElse(null),
        pattern.remarks(),
        exact,
        open(tokens));
  }

  private Set<Open> open(List<TextToken> tokens) {
    Set<Open> open = EnumSet.noneOf(Open.class);
    boolean whole = tokens.get(0).decimals() < 0;
    if (Sizes.different(shown) < (whole ? 3 : 2)) {
      open.add(Open.SIZES);
    }
    // A blank right behind the number may be the place of a sign that was never needed.
    boolean blank = tokens.stream().allMatch(t -> t.sign().isEmpty() && t.after().equals(" "));
    boolean plusBehind = tokens.stream().allMatch(t -> t.signAfter() && t.sign().equals("+"));
    boolean word =
        shown.stream().noneMatch(each -> each.mm().signum() < 0)
            && tokens.stream().allMatch(SignWord::isLikelyFor);
    if (blank || plusBehind || word) {
      open.add(Open.SIGN);
    }
    return open;
  }

  static String text(Bytes bytes) {
    return new String(bytes.toArray(), StandardCharsets.ISO_8859_1);
  }
}
