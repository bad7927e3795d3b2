package boreledger.station.bench.tone;

/** What the bench says to the ear. Never blocks, never fails. */
public interface Tones {
  /** A bench without sound. */
  Tones SILENT =
      new Tones() {
        @Override
        public void taken() {}

        @Override
        public void takenBack() {}

        @Override
        public void lookAtMe() {}
      };

  /** A reading was taken: go on. */
  void taken();

  /** A reading does not count any more: gauge its place again. */
  void takenBack();

  /** Something was refused or asks for an answer: look at the screen. */
  void lookAtMe();
}
