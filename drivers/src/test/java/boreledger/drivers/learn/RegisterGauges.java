package boreledger.drivers.learn;

import static boreledger.drivers.learn.BinaryGauges.with;
import static boreledger.drivers.learn.InventedGauge.of;

import boreledger.drivers.learn.InventedGauge.Chunking;
import java.util.List;

/** Invented gauges that answer as Modbus RTU registers. */
final class RegisterGauges {
  private RegisterGauges() {}

  static List<InventedGauge> all() {
    return List.of(
        of(
            "one register",
            "0.001",
            r -> answer(2, 2).big(r.counts(), 2).littleCrc(0, Crc.MODBUS).frame()),
        of(
                "two registers, high first",
                "0.0001",
                r -> answer(7, 4).big(r.counts(), 4).littleCrc(0, Crc.MODBUS).frame())
            .in(Chunking.HALVES),
        of(
            "two registers, low first",
            "0.0001",
            r ->
                answer(1, 4)
                    .big(r.counts(), 2)
                    .big(r.counts() >> 16, 2)
                    .littleCrc(0, Crc.MODBUS)
                    .frame()),
        of(
            "a float in registers",
            "0.001",
            r -> answer(5, 4).bigFloat(r.number().floatValue()).littleCrc(0, Crc.MODBUS).frame()));
  }

  /** Slave, function 3 (read holding registers), number of bytes. */
  private static Layout answer(int slave, int bytes) {
    return with(slave, 3, bytes);
  }
}
