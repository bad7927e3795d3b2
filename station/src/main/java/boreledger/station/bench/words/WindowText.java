package boreledger.station.bench.words;

/** What the window around all rooms says. */
public enum WindowText implements Text {
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
  CAUTION,
  VOICE_NONE,
  VOICE_FAILED,
  VOICE_STATUS,
  VOICE_LONG,
  VOICE_OFF,
  VOICE_ON,

  SOUND_ON,
  SOUND_OFF,
  LIGHT_DARK,
  LIGHT_BRIGHT,
  LIGHT_SUN,
  UNIT_OF_JOB,
  UNIT_MM,
  UNIT_IN,
  SCREEN_WINDOW,
  SCREEN_FULL,
  /** The switch on the rail that names the language spoken. */
  LANGUAGE_KEY,
  /** The same switch when another language was chosen. */
  LANGUAGE_NEXT_START,
  LANGUAGE_SPOKEN,

  ROOM_BORES,
  ROOM_GAPS,

  ROOM_START,

  ENGINE_SPOKEN,
  ENGINE_UNKNOWN;
}
