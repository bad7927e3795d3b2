package boreledger.station.wording;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Sentences that come as English text because the ledger, a gauge's line, a table or a budget keeps
 * them so. Each is told from its English words, so that another language can say it.
 */
public enum RecordedSentence {
  KEY_STUCK,
  NEVER_STILL,
  STILL_WHERE_BEFORE,
  NEVER_ROCKING,
  NEVER_LEFT,
  FEW_ROCKS,
  FAST_ROCKS,
  WILD_ROCKS,
  SPLIT_ROCKS,
  UNEVEN_ROCKS,
  LINE_AWAY,
  PLAN_DONE,
  BORE_IMPLAUSIBLE,
  GAP_IMPLAUSIBLE,
  DEPTH_IMPLAUSIBLE,
  CONFIRMED,
  FREE_AIR,
  PUSHED_IN,
  GAUGED_AGAIN,
  BEGUN_BEFORE,
  AT_THE_BENCH,
  FOOT_SWITCH,
  NOTHING_TO_TAKE_BACK,
  CHECK_NOT_SKIPPED,
  ONLY_ONE_LEFT,
  CHECK_FIRST,
  CHECK_IN_TURN,
  NOT_IN_PLAN,
  CANNOT_BE_ASKED,
  GONE_NOT_ASKED,
  RECORDED_BYTES,
  NO_HELD_VALUE,
  NO_PEDAL,
  SWITCH_SAYS,
  UNIT_CHANGED,
  MANY_UNREADABLE,
  OUT_OF_RANGE,
  ON_HOLD,
  LOW_BATTERY,
  NO_ANSWER,
  NO_WHOLE_ANSWER,
  NO_ENDING,
  UNTIL_NEXT_ENDING,
  TOO_LONG_WITHOUT_ENDING,
  UNTIL_NEXT_SILENCE,
  TOO_LONG_WITHOUT_SILENCE,
  BROKE_BEFORE_SILENCE,
  NO_MODBUS,
  TOO_FEW_OF,
  NO_FIXED_FRAME_MARKED,
  NO_FIXED_FRAME_STARTED,
  NO_FIXED_FRAME_ENDED,
  NO_FIXED_FRAME,
  EMPTY_FRAME,
  IN_PIECES,
  NOT_ASCII,
  NO_MATCH,
  SEVERAL_VALUES,
  TWO_SIGNS,
  WRONG_UNIT,
  TOO_MANY_STEPS,
  NO_DECIMAL,
  TOO_MANY_DIGITS,
  EXPONENT_TOO_FAR,
  NOT_A_NUMBER,
  MINUS_INFINITY,
  INFINITY,
  NO_RESPONSE,
  BEYOND_KILOMETRE,
  UNITS_DIFFER,
  BOTH_UNITS,
  NEITHER_UNIT,
  TOO_FEW_BYTES,
  WHAT_STANDS_AT,
  CHECK_FROM_TO,
  MODBUS_RESPONSE,
  CHECK_DIFFERS,
  CHECK_NO_HEX,
  NO_DIGIT,
  TOO_MANY_DECIMALS,
  REQUEST_CAME_BACK,
  MODBUS_EXCEPTION,
  RESPONSE_SLAVE,
  RESPONSE_FUNCTION,
  RESPONSE_BYTES,
  RESPONSE_LENGTH,
  LINE_GONE,
  LINE_BACK,
  LINE_PULLED,
  NOT_OPENED,
  NOT_CONNECTED,
  CONNECTION_BROKE,
  OTHER_END_CLOSED,
  NOT_WRITTEN,
  NOT_WRITTEN_BECAUSE,
  NO_SUCH_PORT,
  NO_SERIAL_LIBRARY,
  TOLD_APART,
  ANOTHER_GAUGE,
  NO_DEVICE,
  DEVICE_NUMBERED,
  DEVICE_PLACED,
  SERIAL_PORT,
  NETWORK_PORT,
  CAPTURE_FILE,
  JUST_GONE,
  NOT_ALLOWED,
  IN_USE,
  SYSTEM_ERROR,
  NO_HOST,
  NOBODY_ANSWERED,
  IS_SERVER_ON,
  NO_DTR,
  NO_RTS,
  TOP_RINGS_TARGET,
  SMALLEST_GAP,
  JOBS_TARGET,
  SUPPOSED,
  TEMPERATURES_SUPPOSED,
  THE_JOB,
  COMMON_PRACTICE,
  FROM_MEMORY,
  SECOND_WIDER,
  VERIFY_ONLY,
  VERIFY_UPPER_HALF,
  ABOUT_HALF_MILLIMETRE,
  MOVED_HERE,
  AT_BORE,
  AT_GAP,
  AT_RING,
  AT_OPENING,
  AT_RESUMING,
  AT_CLOSING,
  IN_CYLINDER,
  GAUGED_IN,
  BUDGET_RESOLUTION,
  BUDGET_ZERO_RESOLUTION,
  BUDGET_ZERO_SCATTER,
  BUDGET_ZERO_REPEATABILITY,
  BUDGET_GAUGE_ERROR,
  BUDGET_SAMPLES,
  BUDGET_REPEATABILITY,
  BUDGET_ZERO_UNCHECKED,
  BUDGET_ZERO_BETWEEN,
  BUDGET_SETTING,
  BUDGET_SETTING_ERROR,
  BUDGET_SETTING_COEFFICIENT,
  BUDGET_SETTING_TEMPERATURE,
  BUDGET_BORE_COEFFICIENT,
  BUDGET_BLOCK_TEMPERATURE,
  BUDGET_GAUGE_GROWTH,
  BUDGET_COEFFICIENTS,
  BUDGET_TEMPERATURE,
  BUDGET_NEUTRAL_FIBRE,
  BUDGET_GAP_READING,
  SESSION_BEING_GAUGED,
  GAUGING_BEGINS_OR_ENDS,
  GAUGING_ENDED_NOW,
  NO_ENTRY_OF_SESSION,
  AMENDS_NOTHING,
  TAKEN_BACK_ALREADY,
  NOT_TAKEN_BACK,
  PLACE_HAS_READING,
  STANDS_THERE_ALREADY,
  ENTRY_OF_ANOTHER_LEDGER,
  PASS_NO_CYLINDER,
  PASS_NO_RING,
  PASS_TURNS,
  PASS_NEEDS_NAME,
  PASS_NO_DECIMAL_BEFORE,
  PASS_NO_DECIMAL_AFTER,
  PASS_BEFORE_CANNOT_BE,
  PASS_AFTER_CANNOT_BE,
  PASS_WITHDRAWN_ALREADY,
  PASS_NOT_NOTED,
  NOT_COMPARABLE,
  RING_DEPTHS_NOT_COMPARED,
  MEASURED_BORE,
  MEASURED_GAP,
  MEASURED_RING_DEPTH,
  NO_RING_IN_JOB,
  NO_SETTING_READING_YET,
  TURNS_TOO_FEW,
  NEGATIVE,
  NOT_ABOVE_ZERO,
  NOT_FINITE,
  FEELER_LEAF,
  GAP_BEFORE_FILING,
  GAP_AFTER_FILING,
  TOO_MANY_STACKS;

  private static final Pattern PLACE = Pattern.compile("\\{(\\d)\\}");
  private static final Map<RecordedSentence, Form> FORMS = forms();

  /** Its English words as a pattern, and which place each group fills. */
  private record Form(Pattern words, List<Integer> places) {}

  /**
   * A sentence with what fills it in.
   *
   * @param parts in the order of the places, {@code {0}} first
   */
  record Known(RecordedSentence sentence, List<String> parts) {}

  /** Its key in the bundles, such as {@code key.stuck}. */
  String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '.');
  }

  /** The sentence that a text is; empty for one that is none of these. */
  static Optional<Known> recognised(String text) {
    for (Map.Entry<RecordedSentence, Form> each : FORMS.entrySet()) {
      Matcher words = each.getValue().words().matcher(text);
      if (words.matches()) {
        Map<Integer, String> parts = new TreeMap<>();
        List<Integer> places = each.getValue().places();
        IntStream.range(0, places.size())
            .forEach(group -> parts.put(places.get(group), words.group(group + 1)));
        return Optional.of(new Known(each.getKey(), List.copyOf(parts.values())));
      }
    }
    return Optional.empty();
  }

  private static Map<RecordedSentence, Form> forms() {
    ResourceBundle english =
        ResourceBundle.getBundle("boreledger.station.wording.recorded", Locale.ROOT);
    Map<RecordedSentence, Form> forms = new EnumMap<>(RecordedSentence.class);
    for (RecordedSentence sentence : values()) {
      forms.put(sentence, form(english.getString(sentence.key()).replace("''", "'")));
    }
    return forms;
  }

  private static Form form(String words) {
    StringBuilder pattern = new StringBuilder();
    List<Integer> places = new ArrayList<>();
    Matcher place = PLACE.matcher(words);
    int from = 0;
    while (place.find()) {
      pattern.append(Pattern.quote(words.substring(from, place.start()))).append("(.+?)");
      places.add(Integer.valueOf(place.group(1)));
      from = place.end();
    }
    pattern.append(Pattern.quote(words.substring(from)));
    return new Form(Pattern.compile(pattern.toString(), Pattern.DOTALL), places);
  }
}
