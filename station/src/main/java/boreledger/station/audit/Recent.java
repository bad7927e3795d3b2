package boreledger.station.audit;

import java.util.LinkedHashMap;
import java.util.Map;

/** A map that forgets what was asked for longest ago. */
final class Recent<K, V> extends LinkedHashMap<K, V> {
  private static final long serialVersionUID = 1L;
  private static final float LOAD = 0.75f;

  private final int most;

  Recent(int most) {
    super(most, LOAD, true);
    this.most = most;
  }

  @Override
  protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
    return size() > most;
  }
}
