package dryfloor.model.fuzz;

import dryfloor.model.fuzz.Tree.Entry;
import dryfloor.model.fuzz.Tree.Leaf;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What can happen to a file that stays JSON. */
enum TreeMutation {
  REMOVE {
    @Override
    void apply(Slots slots) {
      slots.any().remove();
    }
  },
  DUPLICATE {
    @Override
    void apply(Slots slots) {
      Slot slot = slots.any();
      slot.addAfter(slot.entry());
    }
  },
  RENAME {
    @Override
    void apply(Slots slots) {
      Slot slot = slots.any();
      slot.set(new Entry(slots.any().entry().name(), slot.entry().value()));
    }
  },
  SWAP_VALUES {
    @Override
    void apply(Slots slots) {
      Slot one = slots.any();
      Slot other = slots.any();
      Tree kept = one.entry().value();
      one.setValue(other.entry().value());
      other.setValue(kept);
    }
  },
  BORROW_VALUE {
    @Override
    void apply(Slots slots) {
      slots.any().setValue(slots.any().entry().value());
    }
  },
  STRANGE_VALUE {
    @Override
    void apply(Slots slots) {
      slots.any().setValue(new Leaf(Dictionary.value(slots.random())));
    }
  },
  EXTREME_NUMBER {
    @Override
    void apply(Slots slots) {
      changeQuantity(slots, Dictionary.number(slots.random()), "");
    }
  },
  OTHER_NUMBER {
    @Override
    void apply(Slots slots) {
      double power = Math.pow(10, slots.random().nextDouble(-2, 2));
      changeQuantity(slots, String.format(Locale.ROOT, "%.4g", power), "");
    }
  },
  OTHER_UNIT {
    @Override
    void apply(Slots slots) {
      changeQuantity(slots, "", " " + Dictionary.unit(slots.random()));
    }
  },
  REPEAT_ITEM {
    @Override
    void apply(Slots slots) {
      Slot slot = slots.any();
      boolean many = slot.entry().value() instanceof Leaf && slots.random().nextInt(20) == 0;
      int times = many ? 1100 : 1 + slots.random().nextInt(5);
      for (int i = 0; i < times; i++) {
        slot.addAfter(slot.entry());
      }
    }
  },
  NEST {
    @Override
    void apply(Slots slots) {
      Slot slot = slots.any();
      int deep = slots.random().nextInt(4) == 0 ? 70 : 1 + slots.random().nextInt(3);
      for (int i = 0; i < deep; i++) {
        slot.setValue(Slots.around(slot.entry(), slots.random().nextBoolean()));
      }
    }
  },
  EXCHANGE_ID {
    @Override
    void apply(Slots slots) {
      Slot from = slots.anyId();
      Slot to = slots.random().nextInt(3) == 0 ? slots.anyId() : slots.anyText();
      to.setValue(from.entry().value());
    }
  },
  STRANGE_TEXT {
    @Override
    void apply(Slots slots) {
      Slot slot = slots.anyText();
      if (slot.entry().value() instanceof Leaf leaf && leaf.isText()) {
        String token = Dictionary.text(slots.random());
        int at = slots.random().nextInt(leaf.inQuotes().length() + 1);
        slot.setValue(Tree.text(new StringBuilder(leaf.inQuotes()).insert(at, token).toString()));
      }
    }
  };

  private static final Pattern QUANTITY = Pattern.compile("(\"?)(-?[0-9][0-9.e/-]*)(.*)");

  /** Changes the tree somewhere. */
  abstract void apply(Slots slots);

  /** Changes number or unit of one quantity; what is empty stays as it is. */
  private static void changeQuantity(Slots slots, String number, String unit) {
    Slot slot = slots.anyQuantity();
    if (slot.entry().value() instanceof Leaf leaf) {
      Matcher parts = QUANTITY.matcher(leaf.written());
      if (parts.matches()) {
        String quote = parts.group(1);
        slot.setValue(
            new Leaf(
                quote
                    + (number.isEmpty() ? parts.group(2) : number)
                    + (unit.isEmpty() || quote.isEmpty() ? parts.group(3) : unit + quote)));
      }
    }
  }
}
