package dryfloor.analysis.generated;

import static java.lang.annotation.ElementType.TYPE;
import static java.lang.annotation.RetentionPolicy.RUNTIME;

import java.lang.annotation.Retention;
import java.lang.annotation.Target;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/** Properties of buildings by chance. */
@Retention(RUNTIME)
@Target(TYPE)
@Domain(Buildings.class)
@Domain(DomainContext.Global.class)
@AddLifecycleHook(MoreTries.class)
public @interface Tried {}
