package boreledger.drivers.framer;

import boreledger.drivers.line.LineEvent;
import java.util.List;

/**
 * Cuts bytes into frames. It is fed what a line says and knows no port.
 *
 * <p>Where the chunks are cut does not change the events (for kinds that do not live on time). It
 * keeps at most twice its frame's maximum size of bytes that are not yet part of an event; the end
 * of the stream brings out the last of them. One thread uses it.
 */
public interface Framer {
  /** Every event that this line event completes, in order; damage included, with its bytes. */
  List<FrameEvent> feed(LineEvent event);
}
