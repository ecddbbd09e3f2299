package org.twinbar.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.net.Inet4Address;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.time.Duration;
import java.time.InstantSource;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.twinbar.report.paper.Squares;
import org.twinbar.study.Workspace;

/** Where the person at the desk turns the local network on, lets phones in and shuts them out. */
public final class PhonePages implements AutoCloseable {

    private final Workspace workspace;
    private final Supplier<List<String>> addresses;
    private final InstantSource clock;
    private final Phones phones;
    private Optional<PhoneServer> server = Optional.empty();

    /** @param addresses of this machine on networks of its neighbourhood */
    PhonePages(Workspace workspace, Supplier<List<String>> addresses, InstantSource clock) {
        this.workspace = workspace;
        this.addresses = addresses;
        this.clock = clock;
        this.phones = new Phones(clock);
    }

    /** A code as a page shows it. */
    public record ShownCode(String text, String url, Squares.Drawn picture, long minutes) {}

    /** A phone as a page shows it. */
    public record ShownPhone(String id, String name, long minutes) {}

    void routes(RoutesConfig routes) {
        routes.get("/phones", request -> show(request, ""));
        routes.post("/phones/open", this::open);
        routes.post("/phones/code", this::code);
        routes.post("/phones/shut-out", this::shutOut);
        routes.post("/phones/close", this::closeNetwork);
    }

    /** Returns the addresses that home and workshop networks give: private ones, IPv4. */
    static List<String> nearby() {
        try {
            return NetworkInterface.networkInterfaces()
                    .flatMap(NetworkInterface::inetAddresses)
                    .filter(it -> it instanceof Inet4Address && it.isSiteLocalAddress())
                    .map(java.net.InetAddress::getHostAddress)
                    .sorted()
                    .toList();
        } catch (SocketException e) {
            return List.of();
        }
    }

    private synchronized void show(Context request, String trouble) {
        Map<String, Object> with = new LinkedHashMap<>();
        with.put("trouble", trouble);
        with.put("addresses", addresses.get());
        with.put("url", server.map(PhoneServer::url).orElse(""));
        with.put("code", server.flatMap(open -> phones.code().map(code -> shown(open, code))));
        with.put(
                "phones",
                phones.all().stream()
                        .map(it -> new ShownPhone(
                                it.id().toString(),
                                it.name(),
                                Duration.between(it.since(), clock.instant()).toMinutes()))
                        .toList());
        Pages.show(request, "phones", with);
    }

    private ShownCode shown(PhoneServer open, Phones.Code code) {
        Duration left = Duration.between(clock.instant(), code.until());
        return new ShownCode(
                code.text(),
                open.url(code),
                Squares.drawn(open.url(code)),
                Math.max(1, left.plusSeconds(59).toMinutes()));
    }

    private synchronized void open(Context request) {
        String address = Form.of(request).text("address");
        if (!addresses.get().contains(address)) {
            refuse(request, "Choose one of this machine's addresses on the local network.");
            return;
        }
        if (server.isEmpty()) {
            try {
                server = Optional.of(PhoneServer.start(workspace, phones, address));
            } catch (Refusal e) {
                refuse(request, Words.sentence(e));
                return;
            }
        }
        phones.newCode();
        back(request);
    }

    private synchronized void code(Context request) {
        if (server.isEmpty()) {
            refuse(request, "Turn the local network on first.");
        } else {
            phones.newCode();
            back(request);
        }
    }

    private synchronized void shutOut(Context request) {
        if (phones.shutOut(Form.of(request).text("phone"))) {
            back(request);
        } else {
            refuse(request, "There is no such phone any more.");
        }
    }

    private synchronized void closeNetwork(Context request) {
        if (server.isEmpty()) {
            refuse(request, "The local network is off already.");
        } else {
            close();
            back(request);
        }
    }

    private void refuse(Context request, String sentence) {
        request.status(400);
        show(request, sentence);
    }

    private static void back(Context request) {
        request.redirect("/phones", HttpStatus.SEE_OTHER);
    }

    /** Returns where phones begin, while the network is on. */
    synchronized Optional<String> url() {
        return server.map(PhoneServer::url);
    }

    @Override
    public synchronized void close() {
        server.ifPresent(PhoneServer::close);
        server = Optional.empty();
    }
}
