package dryfloor.model.fuzz;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.random.RandomGenerator;

/** What can happen to a file that nobody looks into. */
enum ByteMutation {
  FLIP_BIT {
    @Override
    byte[] apply(byte[] file, byte[] other, RandomGenerator random) {
      byte[] flipped = file.clone();
      flipped[random.nextInt(file.length)] ^= (byte) (1 << random.nextInt(8));
      return flipped;
    }
  },
  SET_BYTE {
    @Override
    byte[] apply(byte[] file, byte[] other, RandomGenerator random) {
      byte[] set = file.clone();
      set[random.nextInt(file.length)] = (byte) random.nextInt(256);
      return set;
    }
  },
  DELETE {
    @Override
    byte[] apply(byte[] file, byte[] other, RandomGenerator random) {
      int from = random.nextInt(file.length);
      return joined(file, 0, from, file, end(file, from, random), file.length);
    }
  },
  DUPLICATE {
    @Override
    byte[] apply(byte[] file, byte[] other, RandomGenerator random) {
      int from = random.nextInt(file.length);
      return joined(file, 0, end(file, from, random), file, from, file.length);
    }
  },
  SPLICE {
    @Override
    byte[] apply(byte[] file, byte[] other, RandomGenerator random) {
      int to = random.nextInt(file.length);
      return joined(file, 0, to, other, random.nextInt(other.length), other.length);
    }
  },
  TRUNCATE {
    @Override
    byte[] apply(byte[] file, byte[] other, RandomGenerator random) {
      return Arrays.copyOf(file, random.nextInt(file.length));
    }
  },
  INSERT_TOKEN {
    @Override
    byte[] apply(byte[] file, byte[] other, RandomGenerator random) {
      byte[] token = Dictionary.token(random);
      int at = random.nextInt(8) == 0 ? 0 : random.nextInt(file.length + 1);
      byte[] before = joined(file, 0, at, token, 0, token.length);
      return joined(before, 0, before.length, file, at, file.length);
    }
  },
  OVERWRITE_WITH_TOKEN {
    @Override
    byte[] apply(byte[] file, byte[] other, RandomGenerator random) {
      byte[] token = Dictionary.token(random);
      int at = random.nextInt(file.length);
      int rest = Math.min(file.length, at + token.length);
      byte[] before = joined(file, 0, at, token, 0, token.length);
      return joined(before, 0, before.length, file, rest, file.length);
    }
  },
  TURN_LINE_BREAKS {
    @Override
    byte[] apply(byte[] file, byte[] other, RandomGenerator random) {
      byte[] turned = file.clone();
      for (int i = 0; i < turned.length; i++) {
        turned[i] = turned[i] == '\n' ? (byte) '\r' : turned[i];
      }
      return turned;
    }
  };

  /**
   * The file, changed once.
   *
   * @param file not empty
   * @param other another file, not empty
   */
  abstract byte[] apply(byte[] file, byte[] other, RandomGenerator random);

  /** Most often only a little further, now and then anywhere. */
  private static int end(byte[] file, int from, RandomGenerator random) {
    int most = random.nextInt(4) == 0 ? file.length : 12;
    return Math.min(file.length, from + 1 + random.nextInt(most));
  }

  private static byte[] joined(byte[] a, int fromA, int toA, byte[] b, int fromB, int toB) {
    ByteArrayOutputStream both = new ByteArrayOutputStream(toA - fromA + toB - fromB);
    both.write(a, fromA, toA - fromA);
    both.write(b, fromB, toB - fromB);
    return both.toByteArray();
  }
}
