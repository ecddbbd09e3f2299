package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.twinbar.decision.QuestionException;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Description;
import org.twinbar.method.Methods;
import org.twinbar.method.Property;
import org.twinbar.method.TestMethod;
import org.twinbar.study.Act;
import org.twinbar.study.TypedTest;
import org.twinbar.study.Workspace;
import org.twinbar.study.file.StudyFile;
import org.twinbar.study.file.TestSheet;
import org.twinbar.study.judged.Asked;
import org.twinbar.study.judged.Claim;
import org.twinbar.study.judged.StudyName;
import org.twinbar.study.table.BlankTable;
import org.twinbar.study.table.Handed;
import org.twinbar.study.table.Upload;

/** What is added to a study at the desk: tests, by hand or from files, and claims. */
public final class MakingPages {

    private final Workspace workspace;
    private final Methods methods;

    MakingPages(Workspace workspace, Methods methods) {
        this.workspace = workspace;
        this.methods = methods;
    }

    void routes(RoutesConfig routes) {
        routes.get("/studies/{study}/add-test", request -> tests(request, "", Form.EMPTY));
        routes.post("/studies/{study}/add-test", this::byHand);
        routes.post("/studies/{study}/add-test/planned", this::planned);
        routes.post("/studies/{study}/add-test/files", this::fromFiles);
        routes.get("/studies/{study}/add-claim", request -> claims(request, "", Form.EMPTY));
        routes.post("/studies/{study}/add-claim", this::claim);
    }

    private void tests(Context request, String trouble, Form form) {
        StudyName study = study(request);
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("study", study);
        with.put("methods", untested(study));
        with.put(
                "chosen",
                chosen(request, form).filter(it -> untested(study).contains(it.description())));
        with.put("planned", planned(study));
        with.put("form", form);
        with.put("trouble", trouble);
        Pages.show(request, "add-test", with);
    }

    /** Returns how many specimens of a study's plan each test is made on. */
    private Map<String, Integer> planned(StudyName study) {
        Map<String, Integer> planned = new LinkedHashMap<>();
        workspace
                .plans()
                .of(study)
                .specimens()
                .forEach(it -> planned.merge(it.series().method(), 1, Integer::sum));
        return planned;
    }

    private void planned(Context request) {
        StudyName study = study(request);
        Form form = Form.of(request);
        try {
            String method = form.said("method")
                    .orElseThrow(() -> new InputException("choose what is measured"));
            if (!planned(study).containsKey(method)) {
                throw new InputException("the plan has no %s test".formatted(method));
            }
            workspace
                    .plans()
                    .startTest(
                            Act.by(Words.WHO),
                            study,
                            TestSheet.of(method).withSet(Trial.set(form)));
            request.redirect(Links.rig(study, method), HttpStatus.SEE_OTHER);
        } catch (InputException | Refusal e) {
            request.status(400);
            tests(request, Words.sentence(e), form);
        }
    }

    private Optional<NewTest> chosen(Context request, Form form) {
        return form.said("method")
                .or(() -> Optional.ofNullable(request.queryParam("method")))
                .flatMap(methods::named)
                .map(method -> NewTest.of(method.description()));
    }

    /** A study has one test of a method. */
    private List<Description> untested(StudyName study) {
        List<String> tested = workspace.typing().tests(study);
        return methods.all().stream()
                .map(TestMethod::description)
                .filter(it -> !tested.contains(it.name()))
                .toList();
    }

    private void byHand(Context request) {
        StudyName study = study(request);
        Form form = Form.of(request);
        try {
            NewTest test = chosen(request, form)
                    .orElseThrow(() -> new InputException("choose what is measured"));
            TestSheet sheet = test.sheet(form);
            String name = sheet.method() + ".csv";
            // A curve may be followed on a film later on, and then needs its place.
            Upload table = test.description().channels().isEmpty()
                    ? BlankTable.of(name, form.text("specimens"), test.typed(form))
                    : BlankTable.withCurves(name, form.text("specimens"), test.typed(form));
            workspace.addTest(
                    Act.by(Words.WHO),
                    study,
                    new StudyFile.Test(sheet, table.name(), Optional.empty()),
                    Handed.among(List.of(table)));
            request.redirect(Links.rig(study, sheet.method()), HttpStatus.SEE_OTHER);
        } catch (InputException e) {
            request.status(400);
            tests(request, Words.sentence(e), form);
        }
    }

    private void fromFiles(Context request) {
        StudyName study = study(request);
        Form form = Form.of(request);
        try {
            Received received = Received.from(request);
            try {
                String method = form.said("method")
                        .orElseThrow(() -> new InputException("choose what was measured"));
                TestSheet sheet = TestSheet.of(method).withSet(Trial.set(form));
                workspace.addTest(
                        Act.by(Words.WHO),
                        study,
                        new StudyFile.Test(sheet, received.table().name(), Optional.empty()),
                        Handed.among(received.all()));
            } finally {
                received.remove();
            }
            request.redirect(Links.study(study), HttpStatus.SEE_OTHER);
        } catch (InputException | Refusal e) {
            request.status(400);
            tests(request, Words.sentence(e), form);
        }
    }

    /** A property that a claim may be about. */
    public record About(String method, String title, List<Property> properties) {
        public About {
            properties = List.copyOf(properties);
        }
    }

    private void claims(Context request, String trouble, Form form) {
        StudyName study = study(request);
        List<String> tested = workspace.typing().tests(study);
        List<About> about = methods.all().stream()
                .map(TestMethod::description)
                .filter(it -> tested.isEmpty() || tested.contains(it.name()))
                .map(it -> new About(it.name(), it.title(), it.properties()))
                .toList();
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("study", study);
        with.put("about", about);
        with.put("groups", groups(study, tested));
        with.put("form", form);
        with.put("trouble", trouble);
        Pages.show(request, "add-claim", with);
    }

    private List<String> groups(StudyName study, List<String> tested) {
        return tested.stream()
                .flatMap(method -> workspace.typing().test(study, method).specimens().stream())
                .map(TypedTest.Specimen::group)
                .filter(group -> !group.isEmpty())
                .distinct()
                .toList();
    }

    private void claim(Context request) {
        StudyName study = study(request);
        Form form = Form.of(request);
        try {
            String words = form.said("words")
                    .orElseThrow(() -> new InputException("write down what is claimed"));
            List<Claim.Question> questions = new ArrayList<>();
            form.said("property").ifPresent(property -> questions.add(question(property, form)));
            workspace.addClaim(
                    Act.by(Words.WHO),
                    study,
                    new Claim(words, form.text("said_by"), questions, Optional.empty()));
            request.redirect(Links.study(study), HttpStatus.SEE_OTHER);
        } catch (InputException | QuestionException e) {
            request.status(400);
            claims(request, Words.sentence(e), form);
        }
    }

    private Claim.Question question(String methodAndProperty, Form form) {
        String[] parts = methodAndProperty.split("\t", 2);
        TestMethod method = methods.named(parts[0])
                .filter(it -> parts.length == 2)
                .orElseThrow(() -> new InputException("choose what would show it"));
        Property property = method.description()
                .property(parts[1])
                .orElseThrow(() -> new InputException("choose what would show it"));
        Asked asked = Asked.of(property.name());
        for (Asked.Term term : List.of(
                Asked.Term.CONTROL, Asked.Term.EXPECT, Asked.Term.WORTH, Asked.Term.CLAIMED)) {
            Optional<String> said = form.said(term.key());
            if (said.isPresent()) {
                asked = asked.with(term, said.get());
            }
        }
        return new Claim.Question(property.label(), parts[0], asked);
    }

    private StudyName study(Context request) {
        String id = request.pathParam("study");
        return workspace.studies().stream()
                .filter(study -> study.id().toString().equals(id))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("There is no such study in this workspace."));
    }
}
