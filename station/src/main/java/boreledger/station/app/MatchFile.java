package boreledger.station.app;

import boreledger.calc.match.BoreToFill;
import boreledger.calc.match.RingToPlace;
import boreledger.drivers.file.FileProblem;
import boreledger.drivers.file.TextFile;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Path;
import java.util.List;

/**
 * Rings and bores to be matched, as a JSON file has them: {@code bores} with {@code name}, {@code
 * perimeter_mm}, {@code target_mm}, {@code max_mm}, and {@code rings} with {@code name}, {@code
 * gap_mm}, {@code in_perimeter_mm}.
 */
public record MatchFile(List<Bore> bores, List<Ring> rings) {
  private static final int MAX_BYTES = 1 << 20;
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .build();

  /**
   * A bore.
   *
   * @param maxMm the largest gap allowed; null for no limit
   */
  public record Bore(String name, double perimeterMm, double targetMm, Double maxMm) {
    BoreToFill toFill() {
      return new BoreToFill(name, perimeterMm, targetMm, maxMm);
    }
  }

  /** A ring with its gap as measured in a bore of known perimeter. */
  public record Ring(String name, double gapMm, double inPerimeterMm) {
    RingToPlace toPlace() {
      return RingToPlace.gapped(name, gapMm, inPerimeterMm);
    }
  }

  /** Reads a file completely. */
  public static MatchFile read(Path path) throws FileProblem {
    String text = TextFile.read(path, MAX_BYTES).text();
    try {
      MatchFile file = MAPPER.readValue(text, MatchFile.class);
      if (file.bores == null || file.rings == null) {
        throw FileProblem.of(path.toString(), "expected the keys bores and rings", null);
      }
      return file;
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
      int column = e.getLocation() == null ? 1 : e.getLocation().getColumnNr();
      throw FileProblem.at(path.toString(), line, column, e.getOriginalMessage());
    }
  }

  /** The bores, for the computation. */
  public List<BoreToFill> toFill() {
    return bores.stream().map(Bore::toFill).toList();
  }

  /** The rings, for the computation. */
  public List<RingToPlace> toPlace() {
    return rings.stream().map(Ring::toPlace).toList();
  }
}
