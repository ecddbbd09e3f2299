package org.twinbar.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinBindException;
import java.net.URI;
import java.time.InstantSource;
import java.util.List;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.twinbar.decision.QuestionException;
import org.twinbar.exchange.InputException;
import org.twinbar.method.Methods;
import org.twinbar.study.Workspace;

/** The workspace's pages, served on the loopback address until closed. */
public final class WebServer implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(WebServer.class);
    private static final String LOOPBACK = "127.0.0.1";

    private final Javalin javalin;
    private final Trials trials;
    private final PhonePages phones;
    private final PublishPages publishing;
    private final PackagePages packages;

    private WebServer(
            Javalin javalin,
            Trials trials,
            PhonePages phones,
            PublishPages publishing,
            PackagePages packages) {
        this.javalin = javalin;
        this.trials = trials;
        this.phones = phones;
        this.publishing = publishing;
        this.packages = packages;
    }

    /**
     * Serves a workspace; it stays open when the server is closed.
     *
     * @param methods those that readings may be calculated by
     * @param port where to listen, 0 for any that is free
     * @throws InputException where the port is taken
     */
    public static WebServer start(Workspace workspace, Methods methods, int port) {
        return start(workspace, methods, port, PhonePages::nearby);
    }

    /** @param nearby addresses on networks of the neighbourhood, which a person may open */
    static WebServer start(
            Workspace workspace, Methods methods, int port, Supplier<List<String>> nearby) {
        Trials trials = new Trials();
        PhonePages phones = new PhonePages(workspace, nearby, InstantSource.system());
        StudyPages studies = new StudyPages(workspace);
        PublishPages publishing = new PublishPages(workspace, studies);
        PackagePages packages = new PackagePages(workspace);
        Javalin javalin = Javalin.create(config -> {
            configure(config);
            routes(config.routes, workspace, methods, trials, studies);
            publishing.routes(config.routes);
            packages.routes(config.routes);
            phones.routes(config.routes);
            new PlanPaper(workspace, studies, phones::url).routes(config.routes);
            refusals(config.routes, "refusal");
        });
        try {
            javalin.start(LOOPBACK, port);
        } catch (JavalinBindException e) {
            throw new InputException(
                    "port %s is taken; name another, or 0 for any that is free".formatted(port));
        }
        return new WebServer(javalin, trials, phones, publishing, packages);
    }

    /** Returns where the first page is. */
    public URI address() {
        return URI.create("http://%s:%s/".formatted(LOOPBACK, javalin.port()));
    }

    /** Returns every route as {@code GET /studies/{study}}, for whoever walks them all. */
    public List<String> routes() {
        return javalin.unsafe.internalRouter.allHttpHandlers().stream()
                .map(handler -> handler.endpoint)
                .filter(endpoint -> endpoint.method.isHttpMethod())
                .map(endpoint -> endpoint.method.name() + " " + endpoint.path)
                .toList();
    }

    @Override
    public void close() {
        phones.close();
        javalin.stop();
        trials.close();
        publishing.close();
        packages.close();
    }

    static void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        config.jetty.modifyServletContextHandler(
                // Each file of a form counts as one of its keys.
                servlets -> servlets.setMaxFormKeys(Received.MOST_FILES + 100));
        config.jetty.multipartConfig.maxFileSize(Received.LARGEST_FILE_MB, SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(Received.LARGEST_SUM_MB, SizeUnit.MB);
        config.jetty.multipartConfig.maxInMemoryFileSize(1, SizeUnit.MB);
    }

    private static void routes(
            RoutesConfig routes,
            Workspace workspace,
            Methods methods,
            Trials trials,
            StudyPages studies) {
        routes.before(Guard::check);
        Assets.routes(routes);
        new Doors(workspace).routes(routes);
        new GuidePages(workspace).routes(routes);
        new TrialPages(workspace, methods, trials).routes(routes);
        studies.routes(routes);
        new MarkPages(workspace, studies).routes(routes);
        new ReadOnPages(workspace, methods, studies).routes(routes);
        new PlanPages(workspace, studies).routes(routes);
        new RegisterPages(workspace, studies).routes(routes);
        new CurvePages(workspace, studies).routes(routes);
        new MakingPages(workspace, methods).routes(routes);
        new MixPages(workspace, studies).routes(routes);
        new TreatPages(workspace, studies).routes(routes);
        new StepPages(workspace, studies).routes(routes);
        new CoatPages(workspace, studies).routes(routes);
        new ConditionPages(workspace, studies).routes(routes);
        new RecipePages(workspace).routes(routes);
        new RigPages(workspace, request -> Words.WHO, RigPages.From.DESK).routes(routes);
        new ArchivePages(workspace).routes(routes);
        new InstrumentPages(workspace).routes(routes);
        new ReferencePages(workspace).routes(routes);
        new BenchPages(workspace, methods).routes(routes);
        ManualPages.routes(routes);
    }

    /** @param page the template that a sentence is shown on */
    static void refusals(RoutesConfig routes, String page) {
        routes.exception(
                Refusal.class,
                (refusal, request) ->
                        Pages.refuse(request, page, refusal.status(), Words.sentence(refusal)));
        routes.exception(
                InputException.class,
                (refusal, request) -> Pages.refuse(request, page, 400, Words.sentence(refusal)));
        routes.exception(
                QuestionException.class,
                (refusal, request) -> Pages.refuse(request, page, 400, Words.sentence(refusal)));
        routes.exception(
                HttpResponseException.class,
                (refusal, request) ->
                        Pages.refuse(request, page, refusal.getStatus(), "There is no such page."));
        routes.exception(Exception.class, (failure, request) -> {
            LOG.error("{} {} failed", request.method(), request.path(), failure);
            Pages.refuse(
                    request,
                    page,
                    500,
                    "Twinbar failed to make this page; what is kept in the workspace is as it was."
                            + " The log says more.");
        });
    }
}
