package boreledger.station.results;

import boreledger.calc.bore.SettingStandard;
import boreledger.station.job.Setting;
import boreledger.station.ledger.EntryBody.ReadingTaken;
import boreledger.station.plan.Position.SettingCheck;
import boreledger.station.session.StoredSession;
import boreledger.station.session.StoredSession.StoredReading;
import java.util.DoubleSummaryStatistics;
import java.util.List;

/** A session's checks on the setting ring, in the order they were taken. */
final class ZeroChecks {
  private final StoredSession session;
  private final Setting setting;
  private final List<ReadingTaken> checks;

  ZeroChecks(StoredSession session, Setting setting) {
    this.session = session;
    this.setting = setting;
    this.checks =
        session.readings().stream()
            .filter(stored -> stored.position() instanceof SettingCheck)
            .map(StoredReading::reading)
            .toList();
  }

  static SettingStandard standard(Setting setting) {
    return new SettingStandard(
        setting.sizeMm(),
        setting.expandedUncertaintyMm(),
        setting.ctePerK(),
        setting.maxErrorMm() == null ? 0 : setting.maxErrorMm());
  }

  List<ReadingTaken> list() {
    return checks;
  }

  Double openingMm() {
    return checks.isEmpty() ? null : checks.get(0).valueMm();
  }

  Double closingMm() {
    return checks.size() < 2 ? null : checks.get(checks.size() - 1).valueMm();
  }

  /** How far apart the checks' zeros lie; null with fewer than two. */
  Double driftMm() {
    if (checks.size() < 2) {
      return null;
    }
    SettingStandard standard = standard(setting);
    DoubleSummaryStatistics zeros =
        checks.stream()
            .mapToDouble(
                check ->
                    check.valueMm()
                        - standard.sizeAtMm(
                            BoreSession.orReference(session.stintAt(check.tS()).settingTempC())))
            .summaryStatistics();
    return zeros.getMax() - zeros.getMin();
  }
}
