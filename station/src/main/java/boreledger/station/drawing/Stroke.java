package boreledger.station.drawing;

/** How a line looks. */
public record Stroke(Role role, double width, Dash dash) {
  /** A whole line. */
  public static Stroke solid(Role role, double width) {
    return new Stroke(role, width, Dash.SOLID);
  }
}
