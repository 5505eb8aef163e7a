package dryfloor.model.file;

import dryfloor.model.Sequence;
import dryfloor.model.unit.QuantityKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads sequences of events in time. */
final class SequenceReader {

  private static final List<Form> EVENTS =
      List.of(
          Form.EVENT_THAT_BEGINS,
          Form.EVENT_THAT_ENDS,
          Form.EVENT_THAT_POURS,
          Form.EVENT_THAT_TAKES);

  private SequenceReader() {}

  static Sequence sequence(Fields in) {
    String id = in.text("id");
    List<Sequence.Event> events = new ArrayList<>();
    for (Located item : in.items("events")) {
      Optional<Sequence.Event> event =
          in.variantItem(item, SequenceReader::formOf, SequenceReader::event);
      // An event that can't be read would leave a sequence that means something else.
      event.ifPresentOrElse(events::add, in::flaw);
    }
    return new Sequence(id, in.nameOr(id), events);
  }

  private static Optional<Form> formOf(Located.Structure node) {
    List<Form> forms =
        EVENTS.stream().filter(form -> node.find(form.required().get(1)).isPresent()).toList();
    return forms.size() == 1 ? Optional.of(forms.getFirst()) : Optional.empty();
  }

  private static Sequence.Event event(Fields in) {
    double time = in.quantity("at", QuantityKind.TIME, Sign.ZERO_OR_MORE);
    if (in.isOf(Form.EVENT_THAT_BEGINS)) {
      return new Sequence.Event.Begins(time, in.text("begins"));
    }
    if (in.isOf(Form.EVENT_THAT_ENDS)) {
      return new Sequence.Event.Ends(time, in.text("ends"));
    }
    if (in.isOf(Form.EVENT_THAT_TAKES)) {
      return new Sequence.Event.Takes(
          time,
          in.reference("from", Referent.VESSEL),
          in.quantity("takes", QuantityKind.VOLUME, Sign.ABOVE_ZERO),
          in.quantityOr("downTo", QuantityKind.LENGTH, Sign.ZERO_OR_MORE, 0));
    }
    return new Sequence.Event.Pours(
        time,
        in.reference("into", Referent.VESSEL),
        in.quantity("pours", QuantityKind.VOLUME, Sign.ABOVE_ZERO),
        in.quantityOr("salinity", QuantityKind.SALINITY, Sign.ZERO_OR_MORE, 0));
  }
}
