package boreledger.drivers.decoder;

import boreledger.drivers.line.Bytes;
import boreledger.drivers.profile.BitTest;

/** The bytes of a whole frame, looked up by places that count from its start or its end. */
record FrameBytes(Bytes raw) {
  /** The index of so many bytes from a place. */
  int index(int at, int count) throws Unreadable {
    int index = at < 0 ? raw.size() + at : at;
    if (index < 0 || index + count > raw.size()) {
      throw new Unreadable(raw.size() + " bytes, too few for what stands at " + at);
    }
    return index;
  }

  /** One byte, 0 to 255. */
  int at(int at) throws Unreadable {
    return raw.at(index(at, 1));
  }

  /** So many bytes from a place. */
  Bytes slice(int at, int count) throws Unreadable {
    int index = index(at, count);
    return raw.slice(index, index + count);
  }

  /** The bytes from one boundary up to another. */
  Bytes range(int from, int to) throws Unreadable {
    int start = index(from, 0);
    int end = index(to, 0);
    if (start >= end) {
      throw new Unreadable(raw.size() + " bytes, too few for a check from " + from + " to " + to);
    }
    return raw.slice(start, end);
  }

  /** Whether the test is there and met. */
  boolean meets(BitTest test) throws Unreadable {
    return test != null && test.isMetBy(at(test.at()));
  }
}
