package boreledger.calc.bore;

import boreledger.calc.input.ImpossibleInput;
import boreledger.calc.input.Require;
import boreledger.calc.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A cylinder's diameters over depth.
 *
 * @param sections one per gauged depth, from the deck down; one or more
 */
public record BoreProfile(List<BoreSection> sections) {
  /**
   * Takes a copy and checks the order.
   *
   * @throws ImpossibleInput when there is none, or one is not deeper than the one before
   */
  public BoreProfile {
    sections = List.copyOf(sections);
    Require.atLeast(1, sections.size(), "gauged depths");
    for (int i = 1; i < sections.size(); i++) {
      if (sections.get(i).depthMm() <= sections.get(i - 1).depthMm()) {
        throw new ImpossibleInput(
            String.format(
                Locale.ROOT,
                "section at %s mm is not deeper than the one before at %s mm",
                sections.get(i).depthMm(),
                sections.get(i - 1).depthMm()));
      }
    }
  }

  /**
   * The profile of one cylinder's diameters, in any order of depths; the order of axes is kept.
   *
   * @throws ImpossibleInput when there is none, or a position is there twice
   */
  public static BoreProfile of(List<Diameter> diameters) {
    Map<Double, List<Diameter>> byDepth = new TreeMap<>();
    diameters.forEach(
        each -> byDepth.computeIfAbsent(each.depthMm(), fresh -> new ArrayList<>()).add(each));
    return new BoreProfile(
        byDepth.entrySet().stream()
            .map(entry -> new BoreSection(entry.getKey(), entry.getValue()))
            .toList());
  }

  /** All diameters, from the deck down. */
  public List<Diameter> diameters() {
    return sections.stream().flatMap(section -> section.diameters().stream()).toList();
  }

  /** The taper along each axis that was gauged at two depths or more, in the order of axes. */
  public List<Taper> tapers() {
    return diameters().stream()
        .map(Diameter::axis)
        .distinct()
        .flatMap(axis -> taper(axis).stream())
        .toList();
  }

  /** The taper along an axis; empty when it was gauged at fewer than two depths. */
  public Optional<Taper> taper(String axis) {
    List<Diameter> along = sections.stream().flatMap(each -> each.on(axis).stream()).toList();
    if (along.size() < 2) {
      return Optional.empty();
    }
    Diameter deepest = along.get(along.size() - 1);
    return Optional.of(new Taper(axis, LargestMinusSmallest.of(along), along.get(0), deepest));
  }

  /** The larger of the axes' tapers, the cylinder's; empty when there is none. */
  public Optional<Taper> largestTaper() {
    return tapers().stream().max(Comparator.comparingDouble(each -> each.amount().valueMm()));
  }

  /** The largest out-of-round over depth, the cylinder's; empty when no depth has two axes. */
  public Optional<Estimate> largestOutOfRound() {
    return sections.stream()
        .flatMap(section -> section.outOfRound().stream())
        .max(Comparator.comparingDouble(Estimate::valueMm));
  }

  /** The largest and the smallest of all diameters; empty with a single one. */
  public Optional<LargestMinusSmallest> range() {
    List<Diameter> all = diameters();
    return all.size() < 2 ? Optional.empty() : Optional.of(LargestMinusSmallest.of(all));
  }

  /** The largest of all diameters. */
  public Diameter largest() {
    return diameters().stream().max(Comparator.comparingDouble(Diameter::diameterMm)).orElseThrow();
  }

  /** The smallest of all diameters. */
  public Diameter smallest() {
    return diameters().stream().min(Comparator.comparingDouble(Diameter::diameterMm)).orElseThrow();
  }

  /**
   * The perimeter at any depth: straight between gauged depths, level outside them and marked so.
   *
   * @param depthMm below the deck in millimetres; zero or more
   */
  public Perimeter perimeterAt(double depthMm) {
    Require.notNegative("depth", depthMm, "mm");
    return new PerimeterLine(sections.stream().map(BoreSection::perimeter).toList()).at(depthMm);
  }
}
