package boreledger.station.bench.look;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class PresenceTest {
  @Test
  @Timeout(60)
  void aNodeFollowsHoweverLongItTakes() {
    ObjectProperty<String> profile = new SimpleObjectProperty<>();
    Node node = Presence.when(profile.isNull().asObject(), new Region());
    assertTrue(node.isVisible() && node.isManaged());

    collectGarbage();
    profile.set("learned");

    assertFalse(node.isVisible());
    assertFalse(node.isManaged());
  }

  private static void collectGarbage() {
    WeakReference<Object> unheld = new WeakReference<>(new Object());
    while (unheld.get() != null) {
      System.gc();
    }
  }
}
