"""Sends three requests to a running Scalepan through the generated Python client: ask_scalepan.py http://127.0.0.1:8080"""

import json
import sys

import openapi_client as scalepan

client = scalepan.ApiClient(scalepan.Configuration(host=sys.argv[1]))

# Two published products on one comparison basis.
answer = scalepan.ComparisonApi(client).compare(
    products=["mealworm"], against="beef", per=scalepan.FunctionalUnitId.KG_MINUS_PROTEIN
)
print(answer.items[0].against_sentence)

# Numbers of the records; a range such as [400, 600] is sent as JSON.
number = scalepan.RecordedNumber

# A farm from its records (invented), and a published product beside it.
shed = scalepan.InsectFarm(
    kind="insects",
    product=scalepan.RearedInsect("superworm"),
    region="portugal",
    harvest=scalepan.Harvest(scalepan.HarvestWeighed(kg_per_year=number(240))),
    feed=[scalepan.FeedUse(ingredient="wheat-bran", kg=number(650), burden="mass")],
    energy=[scalepan.EnergyUse(carrier="grid-electricity", amount=number(400))],
)
records = scalepan.FootprintRequest(
    system=scalepan.ProductionSystem(shed), compare=scalepan.Beside(products=["chicken"])
)
footprint = scalepan.RecordsApi(client).footprint(records).footprints[0]
print(footprint.footprint.text)
print(footprint.compare[0].actual_instance.sentence)

# A misspelt name is refused, with a hint.
try:
    scalepan.ComparisonApi(client).compare(products=["mealwurm"], against="beef")
except scalepan.ApiException as refusal:
    print(refusal.status, json.loads(refusal.body)["errors"][0]["did_you_mean"][0])
