package org.scalepan.web.server;

import java.net.InetSocketAddress;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.jetty.io.Connection;
import org.scalepan.web.http.Client;

/** Closes connections of a client beyond its limit, so that some are left for others. */
final class ConnectionsPerClient implements Connection.Listener {
    private final int most;
    private final Map<Connection, Client> clients = new ConcurrentHashMap<>();
    private final Map<Client, Integer> open = new ConcurrentHashMap<>();

    ConnectionsPerClient(int most) {
        this.most = most;
    }

    @Override
    public void onOpened(Connection connection) {
        if (connection.getEndPoint().getRemoteSocketAddress() instanceof InetSocketAddress peer) {
            Client client = Client.at(peer.getAddress().getHostAddress());
            // A closed connection no longer has its peer's address.
            clients.put(connection, client);
            if (open.merge(client, 1, Integer::sum) > most) {
                if (connection.getEndPoint() instanceof ServiceEndPoint ours) {
                    ours.hangUp(ServiceEndPoint.HangUp.TOO_MANY_OF_CLIENT);
                }
            }
        }
    }

    @Override
    public void onClosed(Connection connection) {
        Client client = clients.remove(connection);
        if (client != null) {
            open.computeIfPresent(client, (one, count) -> count == 1 ? null : count - 1);
        }
    }

    /** How many clients are connected. */
    int clients() {
        return open.size();
    }
}
