package boreledger.station.bench.lesson;

import boreledger.station.app.LessonEvent.Arrived;
import boreledger.station.bench.words.LessonText;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The last of what arrived, a line for each burst. */
final class HeardLines {
  private static final int MOST = 7;

  private final ObservableList<String> lines = FXCollections.observableArrayList();
  // Kept, since such a view forgets those who listen to it once nobody holds it.
  private final ObservableList<String> linesToSee = FXCollections.unmodifiableObservableList(lines);
  private int burst;

  ObservableList<String> lines() {
    return linesToSee;
  }

  void add(Arrived arrived) {
    String bytes = arrived.hex().replaceAll("(..)(?=.)", "$1 ");
    String line = LessonText.ARRIVED.with(arrived.text(), bytes);
    if (arrived.burst() == burst && !lines.isEmpty()) {
      lines.set(lines.size() - 1, line);
    } else {
      lines.add(line);
    }
    burst = arrived.burst();
    while (lines.size() > MOST) {
      lines.remove(0);
    }
  }

  void clear() {
    lines.clear();
  }
}
