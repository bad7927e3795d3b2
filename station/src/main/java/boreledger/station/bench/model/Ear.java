package boreledger.station.bench.model;

import boreledger.station.bench.tone.Tones;
import boreledger.station.bench.voice.Voice;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;

/** What the bench tells a person who does not look: tones, unless muted, and words if wanted. */
final class Ear {
  private final Tones tones;
  private final Voice voice;
  private final BooleanProperty muted = new SimpleBooleanProperty(false);
  private final BooleanProperty spoken = new SimpleBooleanProperty(false);

  Ear(Tones tones, Voice voice) {
    this.tones = tones;
    this.voice = voice;
  }

  BooleanProperty muted() {
    return muted;
  }

  BooleanProperty spoken() {
    return spoken;
  }

  void taken() {
    sound(tones::taken);
  }

  void takenBack() {
    sound(tones::takenBack);
  }

  void lookAtMe() {
    sound(tones::lookAtMe);
  }

  void say(String sentence) {
    if (spoken.get()) {
      voice.say(sentence);
    }
  }

  private void sound(Runnable tone) {
    if (!muted.get()) {
      tone.run();
    }
  }
}
