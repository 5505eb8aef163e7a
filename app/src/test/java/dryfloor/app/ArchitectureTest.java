package dryfloor.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Who may know whom. */
@AnalyzeClasses(packages = "dryfloor", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest
  static final ArchRule modelKnowsNobody =
      noClasses()
          .that()
          .resideInAPackage("dryfloor.model..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("dryfloor.analysis..", "dryfloor.app..");

  @ArchTest
  static final ArchRule analysisKnowsTheModelOnly =
      noClasses()
          .that()
          .resideInAPackage("dryfloor.analysis..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("dryfloor.app..");

  @ArchTest
  static final ArchRule analysisKnowsNoFileAndNoScreen =
      noClasses()
          .that()
          .resideInAPackage("dryfloor.analysis..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "dryfloor.model.file..",
              "dryfloor.model.unit..",
              "java.io..",
              "java.nio.file..",
              "java.awt..",
              "javax.swing..",
              "javafx..",
              "java.time..",
              "picocli..",
              "tools.jackson..")
          .allowEmptyShould(false);

  @ArchTest
  static final ArchRule onlyTheViewKnowsItsToolkit =
      noClasses()
          .that()
          .resideOutsideOfPackage("dryfloor.app.view..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx..", "java.awt..", "javax.swing..");

  @ArchTest
  static final ArchRule filesAndLessonsKnowNoToolkit =
      noClasses()
          .that()
          .resideInAnyPackage(
              "dryfloor.app.view.file..", "dryfloor.app.view.learn..", "dryfloor.app.shipped..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx..", "java.awt..", "javax.swing..")
          .allowEmptyShould(false);

  @ArchTest
  static final ArchRule drawingKnowsTheModelOnly =
      noClasses()
          .that()
          .resideInAPackage("dryfloor.app.drawing..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "dryfloor.analysis..", "dryfloor.app.report..", "dryfloor.app.command..");

  @ArchTest
  static final ArchRule reportsKnowNoCommand =
      noClasses()
          .that()
          .resideInAPackage("dryfloor.app.report..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("dryfloor.app.command..");

  @ArchTest
  static final ArchRule lawsKnowNoNetwork =
      noClasses()
          .that()
          .resideInAPackage("dryfloor.analysis.hydraulics..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(
              "dryfloor.analysis.network..",
              "dryfloor.analysis.simulation..",
              "dryfloor.analysis.sweep..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule networkKnowsNoTime =
      noClasses()
          .that()
          .resideInAPackage("dryfloor.analysis.network..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("dryfloor.analysis.simulation..", "dryfloor.analysis.sweep..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule simulationKnowsNoSweep =
      noClasses()
          .that()
          .resideInAPackage("dryfloor.analysis.simulation..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("dryfloor.analysis.sweep..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule noPackagesInACircle =
      slices().matching("dryfloor.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule commandsAreAskedByMainAlone =
      classes()
          .that()
          .resideInAPackage("dryfloor.app.command..")
          .should()
          .onlyHaveDependentClassesThat()
          .resideInAnyPackage("dryfloor.app.command..", "dryfloor.app");
}
