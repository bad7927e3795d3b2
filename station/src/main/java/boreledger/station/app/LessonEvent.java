package boreledger.station.app;

import boreledger.drivers.learn.Learned;
import boreledger.drivers.learn.ShownValue;
import boreledger.drivers.profile.LineSettings;
import java.util.List;

/** What happens while a gauge is learned. */
public sealed interface LessonEvent {
  /** Why a setting has its turn. */
  enum Because {
    /** It is the first. */
    FIRST,
    /** Nothing was heard at the one before. */
    SILENT,
    /** What was heard at the one before could not be read. */
    UNREADABLE
  }

  /** A port is listened to at a setting; values shown before are to be shown again. */
  record Listening(LineSettings settings, Because because) implements LessonEvent {}

  /**
   * Bytes came.
   *
   * @param burst counts what the line sent without a pause; the same number replaces what was told
   * @param hex all bytes of the burst so far
   * @param text the same as characters, a dot for what cannot be printed
   */
  record Arrived(int burst, String hex, String text) implements LessonEvent {}

  /** A value was given, but the gauge has said nothing that could be it: its press is awaited. */
  record AwaitsPress(ShownValue shown) implements LessonEvent {}

  /** The line has been sending for seconds without a pause. */
  record NeverPauses() implements LessonEvent {}

  /** What is known after the values shown so far. */
  record Told(List<ShownValue> shown, Learned learned) implements LessonEvent {
    /** Takes a copy of the list. */
    public Told {
      shown = List.copyOf(shown);
    }
  }

  /** It cannot go on; one line says why. */
  record Broke(String why) implements LessonEvent {}
}
