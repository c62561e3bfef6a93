import com.fasterxml.jackson.databind.ObjectMapper;
import java.math.BigDecimal;
import java.util.List;
import org.openapitools.client.ApiClient;
import org.openapitools.client.ApiException;
import org.openapitools.client.api.ComparisonApi;
import org.openapitools.client.api.RecordsApi;
import org.openapitools.client.model.*;

/** Sends three requests to a running Scalepan through the generated Java client: {@code AskScalepan http://127.0.0.1:8080}. */
public final class AskScalepan {
    public static void main(String[] arguments) throws Exception {
        ApiClient client = new ApiClient();
        client.updateBaseUri(arguments[0]);

        // Two published products on one comparison basis.
        ComparisonAnswer answer = new ComparisonApi(client)
                .compare(ComparisonApi.APICompareRequest.newBuilder()
                        .products(List.of("mealworm"))
                        .against("beef")
                        .per(FunctionalUnitId.KG_PROTEIN)
                        .build());
        System.out.println(answer.getItems().get(0).getAgainstSentence());

        // A farm from its records (invented), and a published product beside it.
        InsectFarm shed = new InsectFarm()
                .kind("insects")
                .product(new RearedInsect("superworm"))
                .region("portugal")
                .harvest(new Harvest(new HarvestWeighed().kgPerYear(number(240))))
                .addFeedItem(new FeedUse().ingredient("wheat-bran").kg(number(650)).burden(FeedUse.BurdenEnum.MASS))
                .addEnergyItem(new EnergyUse().carrier("grid-electricity").amount(number(400)));
        FootprintRequest records = new FootprintRequest()
                .system(new ProductionSystem(shed))
                .compare(new Beside().addProductsItem("chicken"));
        SystemFootprint footprint = new RecordsApi(client)
                .footprint(RecordsApi.APIFootprintRequest.newBuilder()
                        .footprintRequest(records)
                        .build())
                .getFootprints()
                .get(0);
        System.out.println(footprint.getFootprint().getText());
        System.out.println(footprint.getCompare().get(0).getPublishedBeside().getSentence());

        // A misspelt name is refused, with a hint.
        try {
            new ComparisonApi(client)
                    .compare(ComparisonApi.APICompareRequest.newBuilder()
                            .products(List.of("mealwurm"))
                            .against("beef")
                            .build());
        } catch (ApiException refusal) {
            String hint = new ObjectMapper()
                    .readTree(refusal.getResponseBody())
                    .at("/errors/0/did_you_mean/0")
                    .asText();
            System.out.println(refusal.getCode() + " " + hint);
        }
    }

    /** A number of the records; a range such as [400, 600] is sent as JSON. */
    private static RecordedNumber number(long value) {
        return new RecordedNumber(BigDecimal.valueOf(value));
    }
}
