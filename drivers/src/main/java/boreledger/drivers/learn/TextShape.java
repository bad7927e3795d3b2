package boreledger.drivers.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A regular expression for what stands beside a value in lines of text. */
final class TextShape {
  private static final Pattern PART =
      Pattern.compile("[+-]?\\d*[.,]\\d+(?!\\d)|[0-9A-Za-z]+| +|.", Pattern.DOTALL);

  private TextShape() {}

  /** An expression that fits all these texts and others of their kind. */
  static String of(List<String> texts) {
    List<List<String>> parts = texts.stream().map(TextShape::parts).toList();
    int count = parts.get(0).size();
    if (!parts.stream().allMatch(each -> each.size() == count)) {
      return mixed(texts);
    }
    StringBuilder shape = new StringBuilder();
    for (int i = 0; i < count; i++) {
      int index = i;
      String part = part(parts.stream().map(each -> each.get(index)).distinct().toList());
      if (part == null) {
        return mixed(texts);
      }
      shape.append(part);
    }
    return shape.toString();
  }

  /** The text as an expression that fits it alone, without characters a profile cannot hold. */
  static String literal(String text) {
    StringBuilder literal = new StringBuilder();
    for (char c : text.toCharArray()) {
      if (c < ' ' || c > '~' || c == '\'') {
        literal.append(String.format(Locale.ROOT, "\\x%02x", (int) c));
      } else {
        literal.append("\\^$.|?*+()[]{}".indexOf(c) >= 0 ? "\\" : "").append(c);
      }
    }
    return literal.toString();
  }

  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    Matcher part = PART.matcher(text);
    while (part.find()) {
      parts.add(part.group());
    }
    return parts;
  }

  /** An expression for one part; null when its forms are of different kinds. */
  private static String part(List<String> forms) {
    if (forms.stream().allMatch(form -> form.matches("[+-]?\\d*[.,]\\d+"))) {
      return "[+-]?\\d*[.,]\\d+";
    }
    if (forms.stream().allMatch(form -> form.matches(" +"))) {
      return " +";
    }
    if (forms.size() == 1) {
      // A number that happened to stand still, such as the hour of a time stamp, may move on.
      return forms.get(0).matches("\\d+") ? "\\d+" : literal(forms.get(0));
    }
    // A single character that changes may be a check and become any other.
    boolean words = forms.stream().allMatch(form -> form.matches("[0-9A-Za-z]+"));
    return words && forms.stream().anyMatch(form -> form.length() > 1) ? "[0-9A-Za-z]+" : null;
  }

  /** Whatever follows what all begin with, whole words only. */
  private static String mixed(List<String> texts) {
    String shared = shared(texts);
    int cut = shared.length();
    while (cut > 0 && Character.isLetterOrDigit(shared.charAt(cut - 1))) {
      cut--;
    }
    int from = cut;
    return literal(shared.substring(0, from))
        + loose(texts.stream().map(text -> text.substring(from)).toList());
  }

  private static String shared(List<String> texts) {
    String shared = texts.get(0);
    for (String text : texts) {
      while (!text.startsWith(shared)) {
        shared = shared.substring(0, shared.length() - 1);
      }
    }
    return shared;
  }

  private static String loose(List<String> texts) {
    long lengths = texts.stream().mapToInt(String::length).distinct().count();
    return lengths == 1 ? "[\\x00-\\x7f]{" + texts.get(0).length() + "}" : "[\\x00-\\x7f]*";
  }
}
