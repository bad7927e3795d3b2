package boreledger.station.bench.look;

/** The style classes that {@code bench.css} knows. */
public final class Styles {
  public static final String BRIGHT = "bright";
  public static final String SUN = "sun";

  public static final String RAIL = "rail";
  public static final String RAIL_NAME = "rail-name";
  public static final String RAIL_ROOM = "rail-room";
  public static final String RAIL_ROOM_SHOWN = "rail-room-shown";
  public static final String RAIL_SWITCH = "rail-switch";
  public static final String DESK = "desk";
  public static final String DESK_MIDDLE = "desk-middle";
  public static final String HEAD = "head";
  public static final String HEAD_JOB = "head-job";
  public static final String HEAD_GAUGE = "head-gauge";
  public static final String MUTED = "muted";

  public static final String PLACE_TITLE = "place-title";
  public static final String PLACE_DETAIL = "place-detail";
  public static final String HINT = "hint";

  public static final String LIVE = "live";
  public static final String LIVE_SIZE = "live-size";
  public static final String DIGITS = "digits";
  public static final String DIGIT = "digit";
  public static final String UNIT = "unit";
  public static final String STALE = "stale";

  public static final String TRACE = "trace";
  public static final String TRACE_WORDS = "trace-words";
  public static final String TRACE_LINE = "trace-line";
  public static final String TRACE_SMALLEST = "trace-smallest";
  public static final String TRACE_LEVEL = "trace-level";

  public static final String PICTURE = "picture";
  public static final String BLOCK_OUTLINE = "block-outline";
  public static final String CENTRE_LINE = "centre-line";
  public static final String BORE = "bore";
  public static final String BORE_NOW = "bore-now";
  public static final String BORE_CHOSEN = "bore-chosen";
  public static final String BORE_AREA = "bore-area";
  public static final String BORE_NUMBER = "bore-number";
  public static final String BORE_NUMBER_NOW = "bore-number-now";
  public static final String DONE_ARC = "done-arc";
  public static final String AXIS = "axis";
  public static final String AXIS_TIP = "axis-tip";
  public static final String WALL = "wall";
  public static final String DECK = "deck";
  public static final String DEPTH_LEVEL = "depth-level";
  public static final String DEPTH_OPEN = "depth-open";
  public static final String DEPTH_TAKEN = "depth-taken";
  public static final String DEPTH_NOW = "depth-now";
  public static final String DEPTH_WORDS = "depth-words";
  public static final String DEPTH_WORDS_NOW = "depth-words-now";
  public static final String GAUGE = "gauge";
  public static final String RING = "ring";

  public static final String GRID = "grid";
  public static final String GRID_HEAD = "grid-head";
  public static final String CELL = "cell";
  public static final String CELL_NOW = "cell-now";

  public static final String SAYING = "saying";
  public static final String SAYING_LINE = "saying-line";
  public static final String SAYING_WORDS = "saying-words";
  public static final String CAUTION = "caution";
  public static final String CAUTION_LINE = "caution-line";
  public static final String QUESTION = "question";
  public static final String ANSWERS = "answers";
  public static final String ANSWER = "answer";
  public static final String QUESTION_WORDS = "question-words";

  public static final String HANDS = "hands";
  public static final String HAND = "hand";

  public static final String NOTICES = "notices";
  public static final String NOTICE = "notice";
  public static final String NOTICE_CAUTION = "notice-caution";

  public static final String PROGRESS_TOLD = "progress-told";
  public static final String PROGRESS_LEFT = "progress-left";
  public static final String PROGRESS_WORDS = "progress-words";
  public static final String PARTS = "parts";
  public static final String PARTS_DENSE = "parts-dense";
  public static final String PART = "part";
  public static final String PART_LABEL = "part-label";
  public static final String PART_NOW = "part-now";

  public static final String LINE = "line";
  public static final String LINE_REFUSED = "line-refused";
  public static final String LINE_SOURCE = "line-source";

  public static final String CLOSING = "closing";
  public static final String CLOSING_TITLE = "closing-title";
  public static final String CLOSING_HEAD = "closing-head";
  public static final String CLOSING_DETAIL = "closing-detail";
  public static final String VERDICTS = "verdicts";
  public static final String VERDICT = "verdict";
  public static final String VERDICT_TITLE = "verdict-title";
  public static final String VERDICT_WORDS = "verdict-words";
  public static final String DEFERS = "defers";

  public static final String ROOM = "room";
  public static final String ROOM_TITLE = "room-title";
  public static final String CARDS = "cards";
  public static final String CARD = "card";
  public static final String CARD_TITLE = "card-title";
  public static final String FIELDS = "fields";
  public static final String FIELD = "field";
  public static final String FIELD_NAME = "field-name";
  public static final String PROBLEM = "problem";
  public static final String CHOICES = "choices";
  public static final String CHOICE = "choice";
  public static final String RECENT = "recent";
  public static final String JOB_NAME = "job-name";
  public static final String HEARD = "heard";
  public static final String FOOT = "foot";
  public static final String LESSON_COLUMN = "lesson-column";
  public static final String ENGINE = "engine";
  public static final String MAIN_BUTTON = "main-button";
  public static final String CHECK = "check";
  public static final String BUDGET = "budget";
  public static final String ROOM_HINT = "room-hint";
  public static final String FIGURE_INK = "figure-ink";
  public static final String FIGURE_QUIET = "figure-quiet";
  public static final String FIGURE_GROUND = "figure-ground";
  public static final String FIGURE_LIMIT = "figure-limit";
  public static final String FIGURE_BAND = "figure-band";
  public static final String FIGURE_FIRST_AXIS = "figure-first-axis";
  public static final String FIGURE_SECOND_AXIS = "figure-second-axis";
  public static final String FIGURE_OTHER_AXIS = "figure-other-axis";
  public static final String FIGURE_ATTENTION = "figure-attention";
  public static final String FIGURE_FILL = "figure-fill";
  public static final String FIGURE_LINE = "figure-line";

  public static final String FORM = "form";
  public static final String FORM_HEAD = "form-head";
  public static final String FORM_TITLE = "form-title";
  public static final String FORM_HELP = "form-help";
  public static final String FORM_MIDDLE = "form-middle";
  public static final String FORM_OUTLINE = "form-outline";
  public static final String FORM_OUTLINE_SECTION = "form-outline-section";
  public static final String FORM_PAGE = "form-page";
  public static final String FORM_SECTION = "form-section";
  public static final String FORM_SECTION_TITLE = "form-section-title";
  public static final String FORM_PARTS = "form-parts";
  public static final String FORM_PART = "form-part";
  public static final String FORM_PART_HEAD = "form-part-head";
  public static final String FORM_PART_TITLE = "form-part-title";
  public static final String FORM_GRID = "form-grid";
  public static final String FORM_CELL = "form-cell";
  public static final String FORM_LABEL = "form-label";
  public static final String FORM_LINE = "form-line";
  public static final String FORM_INPUT = "form-input";
  public static final String FORM_NUMBER = "form-number";
  public static final String FORM_NUMBERS = "form-numbers";
  public static final String FORM_SEGMENTS = "form-segments";
  public static final String FORM_SEGMENT = "form-segment";
  public static final String FORM_LIST = "form-list";
  public static final String FORM_UNIT = "form-unit";
  public static final String FORM_NOTE = "form-note";
  public static final String FORM_PROBLEM = "form-problem";
  public static final String FORM_PROBLEM_WORDS = "form-problem-words";
  public static final String FORM_FOLD = "form-fold";
  public static final String FORM_BUTTON = "form-button";
  public static final String FORM_FOOT = "form-foot";
  public static final String FORM_STATE = "form-state";

  public static final String LEDGER_COLUMNS = "ledger-columns";
  public static final String LEDGER_SIDE = "ledger-side";
  public static final String LEDGER_SESSIONS = "ledger-sessions";
  public static final String LEDGER_HEAD = "ledger-head";
  public static final String LEDGER_ASKED = "ledger-asked";
  public static final String LEDGER_FILE = "ledger-file";
  public static final String LEDGER_LIST = "ledger-list";
  public static final String LEDGER_NONE = "ledger-none";
  public static final String LEDGER_ROW = "ledger-row";
  public static final String LEDGER_CELL = "ledger-cell";
  public static final String LEDGER_SIGNED = "ledger-signed";
  public static final String LEDGER_WORDS = "ledger-words";
  public static final String LEDGER_STRONG = "ledger-strong";
  public static final String LEDGER_PAST = "ledger-past";
  public static final String LEDGER_SCROLL = "ledger-scroll";
  public static final String LEDGER_SAMPLES = "ledger-samples";
  public static final String LEDGER_STRUCK = "ledger-struck";
  public static final String LEDGER_BYTES = "ledger-bytes";
  public static final String LEDGER_FACTS = "ledger-facts";
  public static final String LEDGER_SAYING = "ledger-saying";

  private Styles() {}
}
