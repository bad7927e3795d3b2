package boreledger.drivers.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * A letter or word beside a number that says its sign, such as {@code L} or {@code R} before {@code
 * 1.250}.
 *
 * @param negative the word beside negative numbers
 * @param positive the word beside the others
 */
record SignWord(String negative, String positive) {
  /** Stands in a token's text where the word was. */
  private static final String PLACE = "\ue000";

  // Common practice, no source.
  private static final Set<String> USUAL =
      Set.of("l", "r", "left", "right", "n", "p", "neg", "pos", "minus", "plus");
  private static final Pattern WORD = Pattern.compile("(?<![0-9A-Za-z])[A-Za-z]+(?![0-9A-Za-z])");

  /** Numbers with a sign that a word gives them, and that word. */
  record Signed(List<TextToken> tokens, SignWord word) {}

  /**
   * Every way in which a word that takes two forms could be the sign of numbers that have none.
   *
   * @param tokens the same number of each line
   */
  static List<Signed> in(List<TextToken> tokens) {
    List<Signed> all = new ArrayList<>();
    if (tokens.stream().allMatch(token -> token.sign().isEmpty())) {
      all.addAll(beside(tokens, TextToken::before, TextToken::withBefore));
      all.addAll(beside(tokens, TextToken::after, TextToken::withAfter));
    }
    return all;
  }

  /** Whether a word stands beside a number without a sign that is usual for one. */
  static boolean isLikelyFor(TextToken token) {
    return token.sign().isEmpty()
        && (words(token.before()).stream().anyMatch(SignWord::isUsual)
            || words(token.after()).stream().anyMatch(SignWord::isUsual));
  }

  /** A text without what stands for the word. */
  static String without(String text) {
    return text.replace(PLACE, "");
  }

  /** Whether an expression made of texts has a place for the word. */
  static boolean hasPlace(String shape) {
    return shape.contains(TextShape.literal(PLACE));
  }

  /** The expression with the word in its place. */
  String inPlace(String shape) {
    String word = "(?:(?<negative>" + negative + ")|" + positive + ")";
    return shape.replace(TextShape.literal(PLACE), word);
  }

  private interface Exchange {
    TextToken in(TextToken token, String text, String sign);
  }

  private static List<Signed> beside(
      List<TextToken> tokens, Function<TextToken, String> side, Exchange exchange) {
    List<Signed> all = new ArrayList<>();
    List<String> texts = tokens.stream().map(side).toList();
    int count = words(texts.get(0)).size();
    if (!texts.stream().allMatch(text -> words(text).size() == count)) {
      return all;
    }
    for (int i = 0; i < count; i++) {
      int at = i;
      Set<String> forms = new TreeSet<>();
      texts.forEach(text -> forms.add(words(text).get(at).group()));
      for (String negative : forms.size() == 2 ? forms : Set.<String>of()) {
        String other = forms.stream().filter(form -> !form.equals(negative)).findFirst().get();
        all.add(
            new Signed(
                tokens.stream().map(t -> signed(t, side, exchange, at, negative)).toList(),
                new SignWord(negative, other)));
      }
    }
    return all;
  }

  private static TextToken signed(
      TextToken token,
      Function<TextToken, String> side,
      Exchange exchange,
      int at,
      String negative) {
    String text = side.apply(token);
    MatchResult word = words(text).get(at);
    String rest = text.substring(0, word.start()) + PLACE + text.substring(word.end());
    return exchange.in(token, rest, word.group().equals(negative) ? "-" : "+");
  }

  private static boolean isUsual(MatchResult word) {
    return USUAL.contains(word.group().toLowerCase(Locale.ROOT));
  }

  private static List<MatchResult> words(String text) {
    return WORD.matcher(text).results().toList();
  }
}
