import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.opensearch.analysis.common.CommonAnalysisPlugin;
import org.opensearch.common.settings.Settings;
import org.opensearch.env.Environment;
import org.opensearch.node.InternalSettingsPreparer;
import org.opensearch.node.Node;
import org.opensearch.plugins.Plugin;
import org.opensearch.transport.Netty4Plugin;

/**
 * One node of a search engine on loopback, for tests: started from its source with the class path of the engine, so that nothing
 * of the engine stands beside the classes of this program. It ends when its input ends, that is when the test does. It has no
 * security of its own and is nothing for real cases.
 *
 * <p>Arguments: name, folder, HTTP port, transport port, names of the first nodes, their transport addresses.
 */
public final class ClusterNode extends Node {
    private ClusterNode(Environment environment, Collection<Class<? extends Plugin>> plugins) {
        super(environment, plugins, false);
    }

    public static void main(String[] args) throws Exception {
        Settings settings = Settings.builder()
                .put("cluster.name", "tunica-test")
                .put("node.name", args[0])
                .put("path.home", args[1])
                .put("path.data", Path.of(args[1], "data").toString())
                .put("http.type", "netty4")
                .put("transport.type", "netty4")
                .put("network.host", "127.0.0.1")
                .put("http.port", args[2])
                .put("transport.port", args[3])
                .putList("cluster.initial_cluster_manager_nodes", List.of(args[4].split(",")))
                .putList("discovery.seed_hosts", List.of(args[5].split(",")))
                .put("cluster.routing.allocation.disk.threshold_enabled", false)
                // a killed node is missed at once, and its part is copied anew at once
                .put("cluster.fault_detection.follower_check.interval", "500ms")
                .put("cluster.fault_detection.leader_check.interval", "500ms")
                .put("node.processors", 2)
                .build();
        Environment environment =
                InternalSettingsPreparer.prepareEnvironment(settings, Map.of(), Path.of(args[1]), () -> args[0]);
        try (Node node = new ClusterNode(environment, List.of(Netty4Plugin.class, CommonAnalysisPlugin.class))) {
            node.start();
            System.out.println("started " + args[0]);
            while (System.in.read() >= 0) {
                // whoever started it is still there
            }
        }
    }
}
