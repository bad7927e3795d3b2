package boreledger.station.job.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A job being filled in: the text of each field as a person would type it, lengths without a unit
 * being millimetres. It never changes; each change gives another draft.
 */
public final class JobDraft {
  private final Map<Section, List<Map<Field, String>>> parts;

  private JobDraft(Map<Section, List<Map<Field, String>>> parts) {
    this.parts = parts;
  }

  /** A draft with nothing in it: no ring, no piston, no mark. */
  public static JobDraft empty() {
    Map<Section, List<Map<Field, String>>> parts = new EnumMap<>(Section.class);
    for (Section section : Section.values()) {
      parts.put(section, section.repeated() ? List.of() : List.of(Map.of()));
    }
    return new JobDraft(parts);
  }

  /** What stands in a field; empty when nothing does. */
  public String text(Place place) {
    return parts.get(place.field().section()).get(place.index()).getOrDefault(place.field(), "");
  }

  /** What stands in a field of a section that is there once. */
  public String text(Field field) {
    return text(new Place(field, 0));
  }

  /** How many of a section there are. */
  public int count(Section section) {
    return parts.get(section).size();
  }

  /** Every field there is, in the order of the file. */
  public List<Place> places() {
    List<Place> places = new ArrayList<>();
    for (Section section : Section.values()) {
      for (int index = 0; index < count(section); index++) {
        for (Field field : section.fields()) {
          places.add(new Place(field, index));
        }
      }
    }
    return places;
  }

  /** The draft with another text in a field. */
  public JobDraft with(Place place, String text) {
    List<Map<Field, String>> changed = listed(place.field().section());
    Map<Field, String> part = new EnumMap<>(Field.class);
    part.putAll(changed.get(place.index()));
    if (text.isEmpty()) {
      part.remove(place.field());
    } else {
      part.put(place.field(), text);
    }
    changed.set(place.index(), part);
    return with(place.field().section(), changed);
  }

  /** The draft with another text in a field of a section that is there once. */
  public JobDraft with(Field field, String text) {
    return with(new Place(field, 0), text);
  }

  /** The draft with one more of a repeated section at its end. */
  public JobDraft adding(Section section) {
    List<Map<Field, String>> changed = listed(section);
    changed.add(Map.of());
    return with(section, changed);
  }

  /** The draft with a copy behind one of a repeated section; the copy has yet to get its name. */
  public JobDraft duplicating(Section section, int index) {
    List<Map<Field, String>> changed = listed(section);
    Map<Field, String> copy = new EnumMap<>(Field.class);
    copy.putAll(changed.get(index));
    copy.remove(section.first());
    changed.add(index + 1, copy);
    return with(section, changed);
  }

  /** The draft without one of a repeated section. */
  public JobDraft removing(Section section, int index) {
    List<Map<Field, String>> changed = listed(section);
    changed.remove(index);
    return with(section, changed);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof JobDraft draft && parts.equals(draft.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return parts.toString();
  }

  private List<Map<Field, String>> listed(Section section) {
    return new ArrayList<>(parts.get(section));
  }

  private JobDraft with(Section section, List<Map<Field, String>> changed) {
    Map<Section, List<Map<Field, String>>> all = new EnumMap<>(parts);
    all.put(section, List.copyOf(changed));
    return new JobDraft(all);
  }
}
