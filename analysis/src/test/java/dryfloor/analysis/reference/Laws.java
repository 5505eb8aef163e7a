package dryfloor.analysis.reference;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The laws whose rows a test runs. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@interface Laws {
  Law[] value();
}
