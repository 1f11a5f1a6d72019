package limberboard.library.value;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Marks a component that holds a whole number within bounds; another one is a problem. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Within {
  /** The smallest number that may stand here. */
  int least();

  /** The largest number that may stand here. */
  int most();
}
