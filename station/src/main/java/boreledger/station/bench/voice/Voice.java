package boreledger.station.bench.voice;

/** Says sentences aloud. Never blocks, never fails. */
public interface Voice {
  /** A bench that says nothing. */
  Voice SILENT = sentence -> {};

  /** Says a sentence soon, in the window's language, unless a later one comes before its turn. */
  void say(String sentence);
}
