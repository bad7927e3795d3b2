package boreledger.station.bench.view;

/** The style classes that {@code bench.css} knows. */
final class Styles {
  static final String BRIGHT = "bright";

  static final String RAIL = "rail";
  static final String RAIL_NAME = "rail-name";
  static final String RAIL_ROOM = "rail-room";
  static final String RAIL_ROOM_SHOWN = "rail-room-shown";
  static final String RAIL_SWITCH = "rail-switch";
  static final String DESK = "desk";
  static final String DESK_MIDDLE = "desk-middle";
  static final String HEAD = "head";
  static final String HEAD_JOB = "head-job";
  static final String HEAD_GAUGE = "head-gauge";
  static final String MUTED = "muted";

  static final String PLACE_TITLE = "place-title";
  static final String PLACE_DETAIL = "place-detail";
  static final String HINT = "hint";

  static final String LIVE = "live";
  static final String LIVE_SIZE = "live-size";
  static final String DIGITS = "digits";
  static final String DIGIT = "digit";
  static final String UNIT = "unit";
  static final String STALE = "stale";

  static final String TRACE = "trace";
  static final String TRACE_WORDS = "trace-words";
  static final String TRACE_LINE = "trace-line";
  static final String TRACE_SMALLEST = "trace-smallest";
  static final String TRACE_LEVEL = "trace-level";

  static final String PICTURE = "picture";
  static final String BLOCK_OUTLINE = "block-outline";
  static final String CENTRE_LINE = "centre-line";
  static final String BORE = "bore";
  static final String BORE_NOW = "bore-now";
  static final String BORE_NUMBER = "bore-number";
  static final String BORE_NUMBER_NOW = "bore-number-now";
  static final String DONE_ARC = "done-arc";
  static final String AXIS = "axis";
  static final String AXIS_TIP = "axis-tip";
  static final String WALL = "wall";
  static final String DECK = "deck";
  static final String DEPTH_LEVEL = "depth-level";
  static final String DEPTH_OPEN = "depth-open";
  static final String DEPTH_TAKEN = "depth-taken";
  static final String DEPTH_NOW = "depth-now";
  static final String DEPTH_WORDS = "depth-words";
  static final String DEPTH_WORDS_NOW = "depth-words-now";
  static final String GAUGE = "gauge";
  static final String RING = "ring";

  static final String GRID = "grid";
  static final String GRID_HEAD = "grid-head";
  static final String CELL = "cell";
  static final String CELL_NOW = "cell-now";

  static final String SAYING = "saying";
  static final String SAYING_LINE = "saying-line";
  static final String SAYING_WORDS = "saying-words";
  static final String CAUTION = "caution";
  static final String CAUTION_LINE = "caution-line";
  static final String QUESTION = "question";
  static final String ANSWERS = "answers";
  static final String ANSWER = "answer";
  static final String QUESTION_WORDS = "question-words";

  static final String PROGRESS_WORDS = "progress-words";
  static final String PARTS = "parts";
  static final String PARTS_DENSE = "parts-dense";
  static final String PART = "part";
  static final String PART_LABEL = "part-label";
  static final String PART_NOW = "part-now";

  static final String LINE = "line";
  static final String LINE_REFUSED = "line-refused";
  static final String LINE_SOURCE = "line-source";

  static final String CLOSING = "closing";
  static final String CLOSING_TITLE = "closing-title";
  static final String CLOSING_HEAD = "closing-head";
  static final String CLOSING_DETAIL = "closing-detail";
  static final String VERDICTS = "verdicts";
  static final String VERDICT = "verdict";
  static final String VERDICT_TITLE = "verdict-title";
  static final String VERDICT_WORDS = "verdict-words";
  static final String DEFERS = "defers";

  private Styles() {}
}
