package boreledger.station.bench.model;

import boreledger.station.bench.words.BenchText;
import boreledger.station.bench.words.Told;
import boreledger.station.bench.words.WindowText;
import boreledger.station.gauging.GaugingEvent;
import java.util.List;

/**
 * Keeps the one notice that stands beside what was read last. It stands until a reading is taken
 * that nothing is to be said against.
 */
final class Notices {
  private final Shown shown;
  private final Ear ear;

  Notices(Shown shown, Ear ear) {
    this.shown = shown;
    this.ear = ear;
  }

  void cautioned(String what) {
    tell(new Notice(Notice.Kind.CAUTION, WindowText.CAUTION.with(Told.recorded(what))));
  }

  void told(GaugingEvent.LineGone gone) {
    tell(
        new Notice(
            Notice.Kind.LINE_GONE, BenchText.NOTICE_LINE_GONE.with(Told.recorded(gone.why()))));
  }

  void told(GaugingEvent.LineBack back) {
    tell(
        new Notice(
            Notice.Kind.LINE_BACK, BenchText.NOTICE_LINE_BACK.with(Told.recorded(back.how()))));
  }

  /** All is well again, or a session begins. */
  void clear() {
    shown.notice.set(null);
  }

  /** Nobody waits for the line any more. */
  void over() {
    Notice notice = shown.notice.get();
    if (notice != null && notice.kind() != Notice.Kind.CAUTION) {
      clear();
    }
  }

  private void tell(Notice notice) {
    shown.notice.set(notice);
    ear.lookAtMe();
    ear.say(Spoken.of(List.of(notice.words())));
  }
}
