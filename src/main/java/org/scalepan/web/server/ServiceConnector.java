package org.scalepan.web.server;

import java.net.InetSocketAddress;
import java.nio.channels.SelectionKey;
import java.nio.channels.SocketChannel;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.io.ManagedSelector;
import org.eclipse.jetty.io.SocketChannelEndPoint;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.thread.Scheduler;
import org.jspecify.annotations.Nullable;
import org.scalepan.web.http.Client;

/**
 * Accepts connections. The head of a request has a deadline, and when nearly all places are taken, a new connection takes the place of
 * the one that has waited for a request the longest, of the client who has the most of these. Otherwise clients that send their heads
 * slowly would take all places, with those of the probes.
 */
final class ServiceConnector extends ServerConnector {
    private static final long SWEEP_MILLISECONDS = 500;

    private final int most;
    private final Duration head;
    private final Consumer<String> onHangUp;
    private volatile Scheduler.@Nullable Task sweep;

    /**
     * @param most connections after which a waiting one makes room
     * @param onHangUp told the reason of each connection that is closed
     * @param head within which the head of a request must be complete, from its first byte
     */
    ServiceConnector(Server server, HttpConfiguration http, int most, Duration head, Consumer<String> onHangUp) {
        super(server, new HttpConnectionFactory(http));
        this.most = most;
        this.head = head;
        this.onHangUp = onHangUp;
    }

    @Override
    protected void doStart() throws Exception {
        super.doStart();
        sweepLater();
    }

    @Override
    protected void doStop() throws Exception {
        Scheduler.Task next = sweep;
        if (next != null) {
            next.cancel();
        }
        super.doStop();
    }

    @Override
    protected SocketChannelEndPoint newEndPoint(SocketChannel channel, ManagedSelector selector, SelectionKey key) {
        makeRoom();
        ServiceEndPoint endPoint = new ServiceEndPoint(channel, selector, key, getScheduler(), onHangUp);
        endPoint.setIdleTimeout(getIdleTimeout());
        return endPoint;
    }

    private List<ServiceEndPoint> waiting() {
        return connected().stream().filter(ServiceEndPoint::waits).toList();
    }

    private List<ServiceEndPoint> connected() {
        return getConnectedEndPoints().stream()
                .filter(EndPoint::isOpen)
                .filter(ServiceEndPoint.class::isInstance)
                .map(ServiceEndPoint.class::cast)
                .toList();
    }

    /** How many connections wait for a request, or for the rest of its head. */
    int connectionsWaiting() {
        return waiting().size();
    }

    private void makeRoom() {
        if (connected().size() < most) {
            return;
        }
        List<ServiceEndPoint> waiting = waiting();
        Map<Client, Long> connections = waiting.stream()
                .map(ServiceConnector::client)
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        waiting.stream()
                .max(Comparator.<ServiceEndPoint>comparingLong(one -> connections.getOrDefault(client(one), 0L))
                        .thenComparing(ServiceEndPoint::waited))
                .ifPresent(one -> one.hangUp(ServiceEndPoint.HangUp.PLACE_NEEDED));
    }

    private static Client client(ServiceEndPoint endPoint) {
        return endPoint.getRemoteSocketAddress() instanceof InetSocketAddress peer
                ? Client.at(peer.getAddress().getHostAddress())
                : Client.at("");
    }

    private void sweepLater() {
        sweep = getScheduler().schedule(this::sweep, SWEEP_MILLISECONDS, TimeUnit.MILLISECONDS);
    }

    private void sweep() {
        Duration idle = Duration.ofMillis(getIdleTimeout());
        for (ServiceEndPoint one : waiting()) {
            if (one.inHead().compareTo(head) > 0) {
                one.hangUp(ServiceEndPoint.HangUp.SLOW_HEAD);
            } else if (one.waited().compareTo(idle) > 0) {
                one.hangUp(ServiceEndPoint.HangUp.NO_REQUEST);
            }
        }
        if (isRunning() || isStarting()) {
            sweepLater();
        }
    }
}
