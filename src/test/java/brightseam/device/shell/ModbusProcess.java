package brightseam.device.shell;

import com.digitalpetri.modbus.server.ModbusTcpServer;
import com.digitalpetri.modbus.server.ProcessImage;
import com.digitalpetri.modbus.server.ReadOnlyModbusServices;
import com.digitalpetri.modbus.tcp.server.NettyTcpServerTransport;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.Optional;

/**
 * A Modbus TCP server as a program of its own, at {@code 127.0.0.1} and the port of its argument. Says {@code ready},
 * then reads lines {@code holding|input <register> <hex of one register>} and answers {@code set} to each.
 */
public final class ModbusProcess {

    private ModbusProcess() {}

    /** Runs until its input ends. */
    public static void main(String[] args) throws Exception {
        ProcessImage image = new ProcessImage();
        ModbusTcpServer server = ModbusTcpServer.create(
                NettyTcpServerTransport.create(config ->
                        config.setBindAddress("127.0.0.1").setPort(Integer.parseInt(args[0]))),
                new ReadOnlyModbusServices() {
                    @Override
                    protected Optional<ProcessImage> getProcessImage(int unit) {
                        return unit == 1 ? Optional.of(image) : Optional.empty();
                    }
                });
        server.start();
        System.out.println("ready");
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String line = in.readLine(); line != null; line = in.readLine()) {
            String[] words = line.split(" ");
            byte[] bytes = HexFormat.of().parseHex(words[2]);
            image.with(change -> {
                if (words[0].equals("input")) {
                    change.writeInputRegisters(all -> all.put(Integer.parseInt(words[1]), bytes));
                } else {
                    change.writeHoldingRegisters(all -> all.put(Integer.parseInt(words[1]), bytes));
                }
            });
            System.out.println("set");
        }
        System.exit(0);
    }
}
