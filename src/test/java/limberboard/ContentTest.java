package limberboard;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;

/**
 * Marks tests of what this library's pages and demo boats say: trade facts, phrases that search
 * must answer, the order of real work. They run as a suite of their own, after the others, so that
 * a build that an edited page breaks says so.
 */
@Tag("content")
@net.jqwik.api.Tag("content")
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
public @interface ContentTest {}
