package dryfloor.model.file;

import java.util.List;
import java.util.Optional;

/** A JSON value that knows where it stands in the file. */
sealed interface Located {

  FilePlace place();

  /** An object; members with the same name are all kept, so that duplicates can be told. */
  record Structure(FilePlace place, List<Member> members) implements Located {
    public Structure {
      members = List.copyOf(members);
    }

    Optional<Located> find(String name) {
      for (Member member : members) {
        if (member.name().equals(name)) {
          return Optional.of(member.value());
        }
      }
      return Optional.empty();
    }
  }

  /**
   * A name and its value.
   *
   * @param place of the name
   */
  record Member(FilePlace place, String name, Located value) {}

  record Sequence(FilePlace place, List<Located> items) implements Located {
    public Sequence {
      items = List.copyOf(items);
    }
  }

  record Text(FilePlace place, String text) implements Located {}

  /** A number as it was written, which may be out of the range of a double. */
  record Numeral(FilePlace place, String literal) implements Located {

    /** The number; infinite or not a number if it was written so or is too large. */
    double value() {
      return switch (literal) {
        case "INF", "+INF" -> Double.POSITIVE_INFINITY;
        case "-INF" -> Double.NEGATIVE_INFINITY;
        default -> Double.parseDouble(literal);
      };
    }
  }

  record Truth(FilePlace place, boolean value) implements Located {}

  record Nothing(FilePlace place) implements Located {}

  /** What stands there, in words: "an object", "'32 mm'". */
  default String description() {
    return switch (this) {
      case Structure structure -> "an object";
      case Sequence sequence -> "a list";
      case Text text -> "'" + text.text() + "'";
      case Numeral numeral -> "'" + numeral.literal() + "'";
      case Truth truth -> "'" + truth.value() + "'";
      case Nothing nothing -> "null";
    };
  }
}
