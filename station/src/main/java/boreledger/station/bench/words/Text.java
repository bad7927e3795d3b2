package boreledger.station.bench.words;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** Every sentence and word of the bench; the words themselves stand in {@code bench.properties}. */
public enum Text {
  /** The program. */
  PROGRAM,
  /** The name of this room on the rail. */
  ROOM_BENCH,
  /** A room on the rail, for screen readers: name, then shown or not. */
  ROOM_SHOWN,
  /** A room on the rail: name, then its number. */
  ROOM_KEY,
  /** The window's title: job, then what is gauged. */
  WINDOW_TITLE,

  MEASURE_BORE,
  MEASURE_GAP,
  MEASURE_RING_DEPTH,
  HEADING_NONE,
  HEADING_RESUMED,

  PLACE_LABEL,
  PLACE_NONE,
  PLACE_NONE_DETAIL,
  PLACE_DONE,
  PLACE_DONE_DETAIL,
  PLACE_CYLINDER,
  PLACE_BORE,
  PLACE_GAP,
  PLACE_RING_DEPTH,
  PLACE_SETTING_RING,
  PLACE_SETTING_MICROMETER,
  PLACE_OPENING,
  PLACE_RESUMING,
  PLACE_CLOSING,
  HINT_PRESS,
  HINT_SETTLE,
  HINT_ROCK,

  SHORT_BORE,
  SHORT_GAP,
  SHORT_RING_DEPTH,
  SHORT_SETTING,

  LIVE_NONE,
  LIVE_DEVIATION,
  LIVE_BORE,
  LIVE_GAP,
  LIVE_RING_DEPTH,
  LIVE_STALE,
  LIVE_SIZE,

  TRACE_SMALLEST,
  TRACE_NO_SMALLEST,
  TRACE_SPAN,
  TRACE_ACCESSIBLE,

  GRID_BORE,
  GRID_GAP,
  GRID_RING_DEPTH,
  GRID_DEPTH,
  GRID_GAP_COLUMN,
  GRID_CLOCK_COLUMN,
  GRID_NOW,
  GRID_TAKEN,
  GRID_CELL,
  GRID_CELL_OPEN,

  PROGRESS_WORDS,
  PROGRESS_PART,
  PROGRESS_SETTING,
  PROGRESS_CYLINDER,
  PROGRESS_ACCESSIBLE,

  BLOCK_ACCESSIBLE,
  BLOCK_ACCESSIBLE_NONE,
  BLOCK_BANKS,
  SECTION_BORE,
  SECTION_GAP,
  SECTION_SETTING,
  SECTION_DECK,
  SECTION_ACCESSIBLE,
  SECTION_ACCESSIBLE_SETTING,

  LINE_NONE,
  LINE_NOTED,
  LINE_WAITING,
  LINE_RECEIVING,
  LINE_QUIET,
  LINE_ENDED,
  LINE_BROKE,
  LINE_STOPPED,
  LINE_REFUSED_NONE,
  LINE_REFUSED,
  AGE_SECONDS,
  AGE_MINUTES,

  SAID_NONE,
  SAID_TAKEN,
  SAID_NOT_TAKEN,
  SAID_HELD,
  SAID_LEFT,
  SAID_TAKING,
  SAID_FAILED,
  SAID_RESULTS_FAILED,
  CAUTION,

  QUESTION_BORE,
  QUESTION_GAP,
  QUESTION_RING_DEPTH,
  QUESTION_TAKE,
  QUESTION_LEAVE,

  OVER_PLAN_DONE,
  OVER_PLAN_DONE_DETAIL,
  OVER_LINE_ENDED,
  OVER_LINE_ENDED_DETAIL,
  OVER_LINE_BROKE,
  OVER_LINE_BROKE_DETAIL,
  OVER_STOPPED,
  OVER_STOPPED_DETAIL,
  OVER_LEDGER_FAILED,
  OVER_LEDGER_FAILED_DETAIL,
  OVER_NO_RESULTS,
  OVER_DEFERS,
  OVER_BECAUSE,

  VERDICT_CYLINDER,
  VERDICT_KEPT,
  VERDICT_OPEN,
  VERDICT_NO_LIMITS,
  VERDICT_BEYOND,
  VERDICT_UNDECIDED,
  VERDICT_LIMIT,
  VERDICT_VALUE,
  VERDICT_CLOSES_HOT,
  VERDICT_FILE,
  VERDICT_FILE_BY,
  VERDICT_READY,
  VERDICT_TOO_WIDE,
  VERDICT_GAP_UNKNOWN,
  VERDICT_GAP_UNREAD,
  VERDICT_TIGHTEST,
  VERDICT_TIGHTEST_HOT,

  CHECK_TAPER,
  CHECK_OUT_OF_ROUND,
  CHECK_BORE_MIN,
  CHECK_BORE_MAX,
  CHECK_WEAR_LIMIT,

  SOUND_ON,
  SOUND_OFF,
  LIGHT_DARK,
  LIGHT_BRIGHT,
  LIGHT_SUN,
  UNIT_OF_JOB,
  UNIT_MM,
  UNIT_IN,
  SCREEN_WINDOW,
  SCREEN_FULL;

  private static final ResourceBundle WORDS =
      ResourceBundle.getBundle("boreledger.station.bench.bench", Locale.ROOT);

  /** Its key in the bundle, such as {@code place.cylinder}. */
  public String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '.');
  }

  /** The words with {@code {0}}, {@code {1}} and so on filled in; numbers come in as text. */
  public String with(String... parts) {
    return new MessageFormat(WORDS.getString(key()), Locale.ROOT).format(parts);
  }
}
