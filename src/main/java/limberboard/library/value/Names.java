package limberboard.library.value;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says what a record's component, or each entry of its list, is the name of. Renaming a page goes
 * by it, and so does completing what is typed.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Names {
  /** What it names. */
  Named value();

  /** Whether the keys of a mapping are the names, and not its values. */
  boolean keys() default false;
}
