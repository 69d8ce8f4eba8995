/**
 * What each public name rests on, as its docstring says. Written by `npm run bases`.
 *
 * @module
 */

/** The `@source` lines of each public name. */
export const functionBases: Readonly<Record<string, readonly string[]>> = {
  "conductor.ambientFactor": [
    "nfpa-70, 310.15(B)(2), equation"
  ],
  "conductor.conductorAmpacity": [
    "nfpa-70, Tables 310.16, 310.15(B)(2)(a), 310.15(B)(3)(a); 110.14(C) for terminals"
  ],
  "conductor.approximateDrops": [
    "derived: the terms of the sending-end equation"
  ],
  "conductor.bs7671Table4E4B": [
    "bs-7671, Table 4E4B"
  ],
  "conductor.circuitCautions": [
    "common practice"
  ],
  "conductor.circularMilArea": [
    "common practice"
  ],
  "conductor.circularMilDrop": [
    "common practice"
  ],
  "conductor.conductorChoices": [
    "nfpa-70, Chapter 9 Table 8 and Table 310.16"
  ],
  "conductor.conductorImpedance": [
    "nfpa-70, Chapter 9 Tables 8 and 9",
    "iec-60364-5-52, annex G: reactance where nothing is known"
  ],
  "conductor.conductorMass": [
    "iec-60028, density of standard annealed copper"
  ],
  "conductor.conductorReactance": [
    "derived: inductance of parallel round wires with even current"
  ],
  "conductor.conductorResistance": [
    "nfpa-70, Chapter 9 Table 8",
    "iec-60228, classes 1, 2 and 5"
  ],
  "conductor.conductorTemperature": [
    "derived: heat balance with resistance linear in temperature"
  ],
  "conductor.recommendedDropLimits": [
    "nfpa-70, 210.19(A) and 215.2, informational notes",
    "iec-60364-5-52, annex G"
  ],
  "conductor.effectiveImpedance": [
    "nfpa-70, Chapter 9 Table 9, note on effective impedance"
  ],
  "conductor.conductorGeometry": [
    "astm-b258, diameter of solid round wire"
  ],
  "conductor.gaugeDiameter": [
    "astm-b258, diameter of solid round wire"
  ],
  "conductor.groundingConductor": [
    "nfpa-70, Table 250.122 and 250.122(A), (B)"
  ],
  "conductor.iec60228Class1": [
    "iec-60228, class 1"
  ],
  "conductor.iec60228Class2": [
    "iec-60228, class 2"
  ],
  "conductor.iec60228Class5": [
    "iec-60228, class 5"
  ],
  "conductor.iecCapacity": [
    "iec-60364-5-52, Tables B.52.2 to B.52.5"
  ],
  "conductor.iecCapacityAreas": [
    "iec-60364-5-52, Tables B.52.2 to B.52.5; recalled"
  ],
  "conductor.iecGroupingFactors": [
    "iec-60364-5-52, Table B.52.17, row 1"
  ],
  "conductor.iecCurrentCapacity": [
    "iec-60364-5-52, Tables B.52.2 to B.52.5 and B.52.17"
  ],
  "conductor.leastMetal": [
    "derived: search over every pair"
  ],
  "conductor.lockedRotorDrop": [
    "derived: Kirchhoff's laws for sine waves; torque in proportion to the square of voltage"
  ],
  "conductor.longestLength": [
    "derived: the sending-end equation solved for the length"
  ],
  "conductor.conductorMetals": [
    "iec-60028, copper",
    "iec-60889, aluminium"
  ],
  "conductor.necTable250_122": [
    "nfpa-70, Table 250.122"
  ],
  "conductor.necAmbientCorrection": [
    "nfpa-70, Table 310.15(B)(2)(a)"
  ],
  "conductor.necBundlingAdjustment": [
    "nfpa-70, Table 310.15(B)(3)(a)"
  ],
  "conductor.necTable310_16": [
    "nfpa-70, Table 310.16"
  ],
  "conductor.necTable310_17": [
    "kuphaldt-lessons, reference chapter, copper wire ampacity table"
  ],
  "conductor.necChapter9Table8": [
    "nfpa-70, Chapter 9 Table 8"
  ],
  "conductor.necChapter9Table9": [
    "nfpa-70, Chapter 9 Table 9"
  ],
  "conductor.smallConductorLimit": [
    "nfpa-70, 240.4(D)"
  ],
  "conductor.standardOvercurrentRatings": [
    "nfpa-70, 240.6(A), 2014 edition"
  ],
  "conductor.standardRatings": [
    "nfpa-70, 240.6(A), 2014 edition"
  ],
  "conductor.resistanceAtTemperature": [
    "iec-60028, temperature coefficient of standard annealed copper"
  ],
  "conductor.temperatureFromResistance": [
    "iec-60028, temperature coefficient of standard annealed copper"
  ],
  "conductor.runVoltages": [
    "derived: Kirchhoff's laws for sine waves"
  ],
  "conductor.sendingVoltage": [
    "derived: Kirchhoff's laws for sine waves"
  ],
  "conductor.parseConductorSize": [
    "common practice"
  ],
  "conductor.proximityEffect": [
    "iec-60287-1-1, clause 2.1.4"
  ],
  "conductor.skinEffectFactor": [
    "iec-60287-1-1, clause 2.1.2"
  ],
  "conductor.smallestConductor": [
    "nfpa-70, 210.19(A) and 215.2 informational notes: 3 % and 5 %"
  ],
  "conductor.serviceImpedance": [
    "derived: Ohm's law at the fault"
  ],
  "conductor.transformerImpedance": [
    "derived: definition of per-unit impedance"
  ],
  "conductor.tabulatedDrop": [
    "bs-7671, appendix 4"
  ],
  "conductor.voltageDrop": [
    "derived: Kirchhoff's laws for sine waves"
  ],
  "conductor.wireResistance": [
    "iec-60028, resistivity and temperature coefficient of standard annealed copper"
  ],
  "control.checkRegulatingValve": [
    "derived: from what the settings mean"
  ],
  "control.checkLevelCutOff": [
    "derived: differences of levels"
  ],
  "control.checkPressureSwitch": [
    "the-driller-when-the-well, storage paragraph: a minute's run",
    "derived: the rest is arithmetic on the settings"
  ],
  "control.pressureHeld": [
    "derived: a balance of flows"
  ],
  "control.regulatedFlow": [
    "derived: from the definitions of set pressure, droop and minimum flow"
  ],
  "control.reliefOrificeFlow": [
    "derived: Torricelli's law with a discharge coefficient"
  ],
  "control.checkReliefValve": [
    "midwest-plan-service-1979, safety devices (from memory): capacity at set pressure not less than the pump's output"
  ],
  "control.weakestPart": [
    "derived: a minimum"
  ],
  "control.checkSpeedSetPoint": [
    "derived: from what the settings mean"
  ],
  "demand.allowanceDemand": [
    "epa-seahome, Household Uses"
  ],
  "demand.fixtureCountDemand": [
    "driller-tech-topics, determining peak demand"
  ],
  "demand.cattleDemand": [
    "nrc-beef-1996, table of daily water intake; recalled",
    "kstate-livestock-water: five of the figures"
  ],
  "demand.bedroomDemand": [
    "new-york-fact-sheet-2, well yield, demand and storage"
  ],
  "demand.dailyDemand": [
    "penn-state-water-planning, first paragraph"
  ],
  "demand.householdRange": [
    "penn-state-water-planning, first paragraph"
  ],
  "demand.peakFlow": [
    "penn-state-water-planning, peak demand paragraph"
  ],
  "demand.fireReserve": [
    "broz-g1801, first page and table 1",
    "tm-5-813-7, 1-3"
  ],
  "demand.fixtureDemand": [
    "ipc-2021, table E103.3(3)",
    "nspc, table B.5.4",
    "hunter-1940, demand curve; recalled"
  ],
  "demand.fixtureUnits": [
    "ipc-2021, table E103.3(2); recalled"
  ],
  "demand.irrigationDemand": [
    "derived: volume of a layer of water"
  ],
  "demand.livestockDemand": [
    "unh-livestock-water, livestock table",
    "kstate-livestock-water, daily requirement pages",
    "federal-livestock-figures",
    "alberta-pasture-pipeline, table 1"
  ],
  "demand.publishedDailyUses": [
    "penn-state-water-planning",
    "renewable-energy-2017, table 1",
    "broz-g1801, table 1",
    "tm-5-813-7, 1-4",
    "new-york-fact-sheet-2",
    "wac-246-290-221, (4)",
    "unh-livestock-water"
  ],
  "demand.publishedFlows": [
    "broz-g1801, first page and table 1",
    "h2ouse-outdoor",
    "mwps-14-1979; recalled",
    "tm-5-813-7, 1-3",
    "new-york-fact-sheet-2",
    "texas-290-45, (b)(1)(D)"
  ],
  "demand.storageNeed": [
    "rippl-1883: the mass curve"
  ],
  "demand.washingDemand": [
    "unh-livestock-water, dairy washing table",
    "broz-g1801, table 1",
    "h2ouse-outdoor"
  ],
  "demand.weightRuleDemand": [
    "kstate-livestock-water, text"
  ],
  "disinfection.bleachConcentration": [
    "derived: mass balance of chlorine"
  ],
  "disinfection.bleachDose": [
    "derived: mass balance of chlorine"
  ],
  "disinfection.agedStrength": [
    "adam-gordon-1999, rate law; recalled"
  ],
  "disinfection.chlorineCautions": [
    "common practice"
  ],
  "disinfection.contactReached": [
    "derived: definition of CT"
  ],
  "disinfection.contactTime": [
    "derived: definition of CT"
  ],
  "disinfection.dechlorination": [
    "derived: stoichiometry, one mole a mole of chlorine",
    "white-chlorination: thiosulphate; recalled"
  ],
  "disinfection.flush": [
    "derived: plug flow and first-order wash-out of a stirred volume"
  ],
  "disinfection.freeChlorine": [
    "morris-1966, equation for the ionisation constant; recalled"
  ],
  "disinfection.hypochloriteConcentration": [
    "derived: mass balance of chlorine"
  ],
  "disinfection.hypochloriteDose": [
    "derived: mass balance of chlorine"
  ],
  "disinfection.kitchenMeasure": [
    "nist-sp811: definitions of the US liquid measures"
  ],
  "disinfection.publishedDoses": [
    "navfac-mil-hdbk-1164, p. 26",
    "davis-2010, p. 4-13",
    "alberta-agdex-716-a10, table 1",
    "state-disinfecting-fact-sheet",
    "maryland-well-disinfection, D",
    "san-bernardino-13-24",
    "water-systems-council-disinfection"
  ],
  "disinfection.recirculation": [
    "derived: first-order wash-out of a stirred volume",
    "common practice"
  ],
  "disinfection.giardiaContact": [
    "epa-giardia-ct, formula"
  ],
  "disinfection.virusContact": [
    "epa-profiling-1999, table B-2"
  ],
  "disinfection.samplingPractice": [
    "common practice"
  ],
  "disinfection.stockSolution": [
    "derived: mass balance of chlorine",
    "maryland-well-disinfection, D(2): the 10 gallons"
  ],
  "disinfection.treatedVolume": [
    "derived: volume of a cylinder"
  ],
  "field.airLineLevel": [
    "derived: hydrostatic pressure of a column of water",
    "jcgm-100, 5.1.2"
  ],
  "field.bucketFlow": [
    "jcgm-100, 5.1.2 (independent inputs) and 4.2 (repeated readings)"
  ],
  "field.bucketTime": [
    "derived: definition of volume flow"
  ],
  "field.bucketRuns": [
    "jcgm-100, 5.1.2 and 4.2.3"
  ],
  "field.authorityCaution": [
    "common practice"
  ],
  "field.liftingCautions": [
    "common practice"
  ],
  "field.mainsCautions": [
    "common practice"
  ],
  "field.pressureCautions": [
    "common practice"
  ],
  "field.currentTest": [
    "common practice",
    "jcgm-100, 5.1.2"
  ],
  "field.diagnose": [
    "derived: least squares on the plant's own model",
    "schwarz-1978: the price of a free figure",
    "kass-raftery-1995: ten to one"
  ],
  "field.drawdownLog": [
    "derived: definitions of drawdown, specific capacity and recovery",
    "common practice: the tenth of a foot and the 90 %",
    "jcgm-100, 5.1.2",
    "usgs-gwpd-4: the tape"
  ],
  "field.gaugeHead": [
    "derived: hydrostatic pressure of a column of water",
    "jcgm-100, 5.1.2"
  ],
  "field.judgeReading": [
    "jcgm-106, guard bands"
  ],
  "field.liftingLoad": [
    "derived: sum of weights",
    "common practice: the margin"
  ],
  "field.measuredCurve": [
    "derived: Bernoulli's equation from the pumping level to the gauge",
    "jcgm-100, 5.1.2",
    "usgs-gwpd-4: the tape"
  ],
  "field.monteCarlo": [
    "jcgm-101, clause 7",
    "blackman-vigna-2021: the generator"
  ],
  "field.pressureHold": [
    "derived: mass balance of a shut line",
    "jcgm-100, 5.1.2"
  ],
  "field.insulationTest": [
    "ieee-43, minima, test voltage and temperature correction",
    "jcgm-100, 5.1.2"
  ],
  "field.windingTest": [
    "common practice",
    "jcgm-100, 5.1.2"
  ],
  "field.settingHardware": [
    "common practice"
  ],
  "field.echoDepth": [
    "derived: sound in an ideal gas",
    "cramer-1993: the speed at 0 °C; recalled",
    "jcgm-100, 5.1.2"
  ],
  "field.leaningTape": [
    "derived: right triangle"
  ],
  "field.tankTest": [
    "derived: Boyle's law over the time",
    "jcgm-100, 5.1.2"
  ],
  "field.testAllowance": [
    "awwa-c605, as quoted in a filed specification"
  ],
  "field.trajectoryFlow": [
    "hohn-discharge, table 1",
    "derived: free fall of a jet",
    "jcgm-100, 5.1.2"
  ],
  "field.propagateUncertainty": [
    "jcgm-100, 5.1.2 and 5.2.2"
  ],
  "field.voltageTest": [
    "nema-mg-1, 12.44.1: the tolerance",
    "ufgs-16237n, 2.1.1.4: the default dip",
    "jcgm-100, 5.1.2"
  ],
  "field.leastAirGap": [
    "air-gap-ordinance, table of minimum air gaps",
    "dc-25-b1405, 1405.1",
    "water-regs-uk-air-gap, item a"
  ],
  "field.wellheadRules": [
    "el-dorado-setbacks",
    "washtenaw-isolation",
    "army-md0160, 6-10",
    "ten-states-standards, 3.2.5; recalled",
    "montana-arm-36-21-647",
    "washington-wac-173-160-291",
    "maine-cmr-232, 401.2.3",
    "florida-fac-62-532, 500(4)(b)2",
    "warren-county-52-22",
    "davis-2010, p. 4-13",
    "texas-30-tac-290-45",
    "the-driller-pressure-drop",
    "iapmo-upc-2015-608",
    "vermillion-53-057",
    "bloomington-service-pipes",
    "bedford-service-pipes",
    "eldridge-3-08",
    "greentown-154-128",
    "nashua-15210",
    "us-40-cfr-141, 141.65(a); recalled",
    "who-drinking-water, chapter 12; recalled"
  ],
  "fittings.contractionByJet": [
    "derived: sudden widening of the contracted jet"
  ],
  "fittings.suddenContraction": [
    "crane-410, sudden contraction"
  ],
  "fittings.suddenExpansion": [
    "derived: momentum balance over the widening"
  ],
  "fittings.checkValveLoss": [
    "derived: force balance on a disc held by a spring"
  ],
  "fittings.checkValveMinimumFlow": [
    "crane-410, minimum pipe velocities for full disc lift, recalled"
  ],
  "fittings.coefficientOfKv": [
    "iec-60534-2-1: the definition of Kv"
  ],
  "fittings.kvOfCoefficient": [
    "iec-60534-2-1: the definition of Kv"
  ],
  "fittings.constrictionFlow": [
    "derived: continuity and energy over the constriction"
  ],
  "fittings.entranceCoefficient": [
    "crane-410, recalled"
  ],
  "fittings.exitCoefficient": [
    "derived: sudden widening without end"
  ],
  "fittings.coefficientOfLength": [
    "derived: the loss of a fitting set equal to that of pipe"
  ],
  "fittings.equivalentLength": [
    "derived: the loss of a fitting set equal to that of pipe"
  ],
  "fittings.lengthForC": [
    "nfpa-13: the factors for other C"
  ],
  "fittings.printedLength": [
    "nfpa-13: steel pipe",
    "illinois-plumbing-code: copper tube",
    "irc-appendix: screwed fittings",
    "pvc-fittings-table: PVC pipe"
  ],
  "fittings.copperTubeLengths": [
    "illinois-plumbing-code, appendix A, table Q"
  ],
  "fittings.pvcPipeLengths": [
    "pvc-fittings-table"
  ],
  "fittings.screwedFittingLengths": [
    "irc-appendix, table of equivalent lengths"
  ],
  "fittings.steelPipeLengths": [
    "nfpa-13, table of equivalent pipe lengths"
  ],
  "fittings.fittingsLoss": [
    "darby-1999: named elbows, tees and valves",
    "crane-410: foot valves and entrances",
    "derived: insert fittings, check valves, exits, the sum"
  ],
  "fittings.cvOfKv": [
    "iec-60534-2-1"
  ],
  "fittings.kvOfCv": [
    "iec-60534-2-1"
  ],
  "fittings.valveFlow": [
    "iec-60534-2-1"
  ],
  "fittings.valveLoss": [
    "iec-60534-2-1"
  ],
  "fittings.gradualContraction": [
    "crane-410"
  ],
  "fittings.gradualExpansion": [
    "crane-410"
  ],
  "fittings.reducedPortCoefficient": [
    "crane-410"
  ],
  "fittings.hoseFlow": [
    "derived: energy from the gauge to the jet",
    "colebrook-1939: friction"
  ],
  "fittings.insertBores": [
    "common practice: bores of moulded fittings"
  ],
  "fittings.insertFittingCoefficient": [
    "derived: sum of a narrowing, friction, a turn and a widening",
    "darby-1999: the turns",
    "common practice: the usual bores"
  ],
  "fittings.lengthOverDiameterCoefficient": [
    "crane-410"
  ],
  "fittings.lengthsOverDiameter": [
    "crane-410, recalled but for the part-open gate and the butterfly valve"
  ],
  "fittings.coefficientOfLoss": [
    "derived: definition of the resistance coefficient"
  ],
  "fittings.minorLoss": [
    "derived: definition of the resistance coefficient"
  ],
  "fittings.namedFittings": [
    "darby-1999: elbows, tees, valves",
    "crane-410: foot valves and entrances, recalled",
    "munson-2006: the union, recalled",
    "nist-push-connect: the push-connect fittings"
  ],
  "fittings.hydrantOutletCoefficients": [
    "nfpa-291, recalled"
  ],
  "fittings.nozzleFlow": [
    "nfpa-291: the coefficients",
    "derived: energy of a jet"
  ],
  "fittings.dischargeCoefficient": [
    "derived: energy of a jet, less its contraction"
  ],
  "fittings.orificeFlow": [
    "derived: energy of a jet, less its contraction"
  ],
  "fittings.trajectoryVelocity": [
    "derived: a free fall"
  ],
  "fittings.velocityCoefficient": [
    "derived: a free fall"
  ],
  "fittings.outletCoefficient": [
    "derived: turbulent flow through an outlet of fixed opening"
  ],
  "fittings.outletFlow": [
    "derived: turbulent flow through an outlet of fixed opening"
  ],
  "fittings.outletPressure": [
    "derived: turbulent flow through an outlet of fixed opening"
  ],
  "fittings.ratedLoss": [
    "derived: turbulent loss goes with the square of flow, laminar loss with flow"
  ],
  "fittings.teeCoefficients": [
    "crane-410, tees and wyes",
    "idelchik-2007: the 90° branch of the run's own size, recalled"
  ],
  "fittings.textbookCoefficients": [
    "munson-2006, table of loss coefficients for pipe components, recalled"
  ],
  "fittings.threeKCoefficient": [
    "darby-1999"
  ],
  "fittings.threeKFittings": [
    "darby-1999, table of 3-K constants"
  ],
  "fittings.fullyTurbulentFactor": [
    "colebrook-1939: the limit for a rough wall",
    "crane-410: its use with fittings"
  ],
  "fittings.twoKCoefficient": [
    "hooper-1981"
  ],
  "fittings.twoKFittings": [
    "hooper-1981, table of 2-K constants"
  ],
  "fittings.requiredKv": [
    "iec-60534-2-1"
  ],
  "freeze.berggrenCoefficient": [
    "aldrich-paynter-1953"
  ],
  "freeze.berggrenFrostDepth": [
    "aldrich-paynter-1953, as printed in `wsdot-berggren`",
    "tm-5-852-6, worked example of a homogeneous soil; recalled"
  ],
  "freeze.burialDepth": [
    "plumbing-exam-burial"
  ],
  "freeze.drainBack": [
    "derived: volume of a cylinder",
    "common practice: the gravel"
  ],
  "freeze.buriedPipe": [
    "tm-5-852-5, p. 12-20"
  ],
  "freeze.stefanFrostDepth": [
    "stefan-1891, as printed in `pavement-interactive-frost`"
  ],
  "freeze.surfaceFreezingIndex": [
    "tm-5-852-4, table 4-1"
  ],
  "freeze.timeToFreeze": [
    "ashrae-fundamentals, insulation chapter, as quoted with two printed answers in `warren-freezing`",
    "derived: freezing through, from the heat balance of a growing ring of ice",
    "churchill-bernstein-1977: the wind"
  ],
  "generator.generatorCautions": [
    "cpsc-generators: 20 ft from openings",
    "cdc-carbon-monoxide: 20 ft from openings",
    "nfpa-70, 250.34 and 702: bonding and transfer"
  ],
  "generator.cordAmpacity": [
    "nfpa-70, Table 400.5(A)(1), 2014 edition"
  ],
  "generator.cordCheck": [
    "nfpa-70, Table 400.5(A)(1), 2014 edition"
  ],
  "generator.frequencyUnderLoad": [
    "derived: straight line of a droop governor"
  ],
  "generator.fuelUse": [
    "dorn-2008, Table 1"
  ],
  "generator.fuelUseBetween": [
    "derived: straight line through two figures"
  ],
  "generator.shaftWorkPerGallon": [
    "dorn-2008, Table 1"
  ],
  "generator.tankRunTime": [
    "derived: volume over flow"
  ],
  "generator.generatorCheck": [
    "ufgs-16237n, 2.1.1.4: 25 % dip",
    "nema-mg-1, ±10 % of rated voltage while running",
    "common practice"
  ],
  "generator.generatorDerating": [
    "progressive-gardening-altitude, 3 % per 1000 ft above 500 ft",
    "common practice"
  ],
  "generator.generatorRules": [
    "cpsc-generators: 20 ft",
    "cdc-carbon-monoxide: 20 ft",
    "nist-generator-distance: 25 ft",
    "nfpa-70, 445.13(A): 115 % (memory)",
    "progressive-dairy-generators: 3 to 5 times",
    "carteret-craven-2013: 2 to 2.25 hp for each kilowatt",
    "ufgs-16237n, 2.1.1.4: 25 %",
    "common practice: 80 %"
  ],
  "generator.pumpingFuel": [
    "dorn-2008, Table 1"
  ],
  "generator.receptacleCheck": [
    "nema-wd-6",
    "nfpa-70, 80 % for continuous load"
  ],
  "generator.receptacleRatings": [
    "nema-wd-6"
  ],
  "generator.generatorForDip": [
    "derived: two reactances in series"
  ],
  "generator.reactanceFromCapability": [
    "derived: two reactances in series"
  ],
  "generator.startingDip": [
    "derived: two reactances in series"
  ],
  "head.bernoulli": [
    "derived: conservation of energy along a stream tube, per weight of water"
  ],
  "head.gradeLines": [
    "derived: Bernoulli's equation from station to station"
  ],
  "head.lineStations": [
    "derived: Darcy–Weisbach run by run"
  ],
  "head.greatestSuctionLift": [
    "derived: NPSH available set equal to NPSH required plus margin"
  ],
  "head.npshAvailable": [
    "ansi-hi-9.6.1: definition of NPSH available (from memory)",
    "derived: Bernoulli's equation from the water's surface to the inlet"
  ],
  "head.pressureClassNeeded": [
    "derived: comparison"
  ],
  "head.headOfPressure": [
    "derived: hydrostatic balance of a column at rest"
  ],
  "head.headOfPressureDifference": [
    "derived: hydrostatic balance of a column at rest"
  ],
  "head.pressureDifferenceOfHead": [
    "derived: hydrostatic balance of a column at rest"
  ],
  "head.pressureOfHead": [
    "derived: hydrostatic balance of a column at rest"
  ],
  "head.totalDynamicHead": [
    "derived: Bernoulli's equation from the pumping level to the discharge",
    "us-army-corps-1998, equation 5-6: the same sum"
  ],
  "head.velocityHead": [
    "derived: kinetic energy per weight"
  ],
  "head.velocityOfHead": [
    "derived: kinetic energy per weight"
  ],
  "motor.codeLetterRanges": [
    "nema-mg-1, locked-rotor code letters"
  ],
  "motor.driveOutputPeak": [
    "derived: reflection at the end of a transmission line",
    "nema-mg-1, parts 30 and 31 (from memory)"
  ],
  "motor.fullLoadCurrent": [
    "nfpa-70, Tables 430.248 and 430.250"
  ],
  "motor.insulationAtTemperature": [
    "ieee-43, temperature correction"
  ],
  "motor.insulationLife": [
    "hubert-electric-machines, example 5.14: ten-degree rule"
  ],
  "motor.insulationReading": [
    "ieee-43, minima, test voltage and temperature correction"
  ],
  "motor.leastPolarizationIndex": [
    "ieee-43, polarization index"
  ],
  "motor.capacitorMotorEfficiency": [
    "cfr-10-431-446, (a)"
  ],
  "motor.enclosedMotorEfficiency": [
    "cfr-10-431-25, (a), in force from 1997"
  ],
  "motor.polyphaseMotorEfficiency": [
    "cfr-10-431-446, (a)"
  ],
  "motor.codeLetterOf": [
    "nema-mg-1, locked-rotor code letters"
  ],
  "motor.lockedRotorCurrent": [
    "nema-mg-1, locked-rotor code letters"
  ],
  "motor.motorBranchCircuit": [
    "nfpa-70, 430.22, 430.32, 430.52, 430.110 and 240.6(A)"
  ],
  "motor.motorConnections": [
    "common practice"
  ],
  "motor.motorCurrent": [
    "derived: definitions of efficiency and power factor"
  ],
  "motor.motorFeederAmpacity": [
    "nfpa-70, 430.24"
  ],
  "motor.protectionRules": [
    "nfpa-70, Table 430.52 and 430.52(C)(1) exception 2"
  ],
  "motor.necTable430_248": [
    "nfpa-70, Table 430.248"
  ],
  "motor.necTable430_250": [
    "nfpa-70, Table 430.250"
  ],
  "motor.powerReading": [
    "derived: definitions of power factor and efficiency"
  ],
  "motor.reducedSupplyStart": [
    "hubert-electric-machines, examples 5.7, 5.8 and 5.18"
  ],
  "motor.supplyTolerance": [
    "nema-mg-1, variation from rated voltage and frequency"
  ],
  "motor.typicalMotor": [
    "cfr-10-431-446, (a): single-phase efficiency",
    "cfr-10-431-25, (a): three-phase efficiency",
    "ufc-3-520-01: power factor 0.8",
    "common practice"
  ],
  "motor.unbalanceDerating": [
    "nema-mg-1, derating curve for unbalanced voltages"
  ],
  "motor.currentUnbalance": [
    "common practice"
  ],
  "motor.voltageUnbalance": [
    "nema-mg-1, effects of unbalanced voltages",
    "hubert-electric-machines, example 5.14: temperature rise"
  ],
  "motor.threeWireReading": [
    "common practice"
  ],
  "motor.windingReading": [
    "common practice"
  ],
  "network.gradeLine": [
    "derived: head falls along a run by what the run loses"
  ],
  "network.outletOfNozzle": [
    "derived: discharge under a head goes as its square root (`torricelli-1644`)"
  ],
  "network.outletOfRating": [
    "derived: discharge under a head goes as its square root (`torricelli-1644`)"
  ],
  "network.pumpSource": [
    "derived: heads along the way of the water add up"
  ],
  "network.solveScenarios": [
    "derived: one steady balance for each use"
  ],
  "network.solveNetwork": [
    "todini-1988: the linear system of each step",
    "cherry-1951: the content whose least value is the steady flow"
  ],
  "network.tankSource": [
    "derived: pressure head above its elevation"
  ],
  "network.worstCombination": [
    "derived: every combination is solved"
  ],
  "pipe.averageInsideDiameter": [
    "ppi-pe-handbook: outside diameter less 2.12 walls, recalled",
    "astm-d2241: the tolerance of walls, which an industry table of average walls bears out"
  ],
  "pipe.churchillFactor": [
    "churchill-1977"
  ],
  "pipe.compareLosses": [
    "colebrook-1939",
    "williams-hazen-1920"
  ],
  "pipe.darcyWeisbachLoss": [
    "colebrook-1939: the friction factor of turbulent flow",
    "moody-1944: the 10 %"
  ],
  "pipe.diameterForHeadLoss": [
    "derived: from colebrook-1939 and the laminar law, by the substitution above"
  ],
  "pipe.equivalentPipe": [
    "derived: equal loss at equal flow; friction by colebrook-1939"
  ],
  "pipe.findPipe": [
    "common practice"
  ],
  "pipe.flowForHeadLoss": [
    "colebrook-1939: the closed form is the paper's own equation, read for Re √f",
    "derived: the laminar law and the bridge of `frictionFactor`"
  ],
  "pipe.frictionFactor": [
    "colebrook-1939, equation 16, with the constants 3.7 and 2.51",
    "poiseuille-1840: the laminar law",
    "derived: the bridge, the only cubic that meets both laws in value and slope"
  ],
  "pipe.haalandFactor": [
    "haaland-1983"
  ],
  "pipe.hazenWilliamsLoss": [
    "williams-hazen-1920: the rule and its constants",
    "mott-2006, section 8.9: the range",
    "common practice: \"near 60 °F\" as 5 to 25 °C"
  ],
  "pipe.hazenWilliamsCoefficient": [
    "ncees-2013, Values of Hazen-Williams coefficient C",
    "nfpa-13, Hazen-Williams C values"
  ],
  "pipe.hazenWilliamsCoefficients": [
    "ncees-2013, values of the coefficient C",
    "nfpa-13, table of C values; recalled"
  ],
  "pipe.coefficientForHeadLoss": [
    "williams-hazen-1920"
  ],
  "pipe.hazenWilliamsDiameter": [
    "williams-hazen-1920"
  ],
  "pipe.hazenWilliamsFlow": [
    "williams-hazen-1920"
  ],
  "pipe.listPipes": [
    "derived: the tables, each with its own source"
  ],
  "pipe.lengthForHeadLoss": [
    "derived: the loss is in proportion to the length; friction by colebrook-1939"
  ],
  "pipe.roughnessForHeadLoss": [
    "colebrook-1939: solved for the roughness"
  ],
  "pipe.metalPipeWorkingPressure": [
    "asme-b31-9: the equation of pressure design"
  ],
  "pipe.multipleOutletFactor": [
    "christiansen-1942: the factor and its approximation",
    "jensen-fratini-1957: the first outlet at half a spacing"
  ],
  "pipe.parallelFlow": [
    "derived: one head at each junction; friction by colebrook-1939"
  ],
  "pipe.parallelLoss": [
    "derived: one head at each junction; friction by colebrook-1939"
  ],
  "pipe.boreArea": [
    "derived: area of a circle"
  ],
  "pipe.pipeMass": [
    "derived: area of a ring times density"
  ],
  "pipe.pipeVolume": [
    "derived: volume of a cylinder"
  ],
  "pipe.pipeGradeProperties": [
    "astm-d1784: PVC, recalled",
    "ppi-pe-handbook: PE, recalled",
    "cda-copper-tube: copper, recalled",
    "common practice: PEX, Poisson's ratios"
  ],
  "pipe.pipesOf": [
    "derived: unit conversion of the table's own figures"
  ],
  "pipe.pressureRatingOfInsideRatio": [
    "astm-d2239: the equation of the standard's appendix"
  ],
  "pipe.pressureRatingOfRatio": [
    "astm-d2241: the equation of the standard's appendix; ISO 161-1 has the same"
  ],
  "pipe.pressureRatingOfWall": [
    "astm-d1785: the equation of the standard's appendix"
  ],
  "pipe.workingPressureWithoutSurge": [
    "missouri-livestock-watering, chapter 5, after ASAE S376.1"
  ],
  "pipe.ratingAtTemperature": [
    "ppfa-ub3: PVC",
    "ppi-pe-handbook: PE4710",
    "awwa-m55: PE3408",
    "astm-f876: PEX, recalled",
    "en-12201-2: PE80 and PE100, recalled",
    "iso-1452-2: PVC-U, recalled"
  ],
  "pipe.serghidesFactor": [
    "serghides-1984"
  ],
  "pipe.seriesFlow": [
    "derived: conservation of mass; friction by colebrook-1939"
  ],
  "pipe.seriesLoss": [
    "derived: conservation of mass; friction by colebrook-1939"
  ],
  "pipe.asmeB3610": [
    "asme-b36-10"
  ],
  "pipe.astmB88": [
    "astm-b88"
  ],
  "pipe.astmD1785": [
    "astm-d1785"
  ],
  "pipe.astmD2239": [
    "astm-d2239"
  ],
  "pipe.astmD2241": [
    "astm-d2241"
  ],
  "pipe.astmD2737": [
    "astm-d2737"
  ],
  "pipe.astmD3035": [
    "astm-d3035"
  ],
  "pipe.astmF876": [
    "astm-f876",
    "astm-f877"
  ],
  "pipe.iso1452": [
    "iso-1452-2"
  ],
  "pipe.iso4427": [
    "iso-4427-2",
    "en-12201-2"
  ],
  "pipe.swameeJainFactor": [
    "swamee-jain-1976"
  ],
  "pipe.wallRoughness": [
    "moody-1944, figure 2",
    "common practice: plastics taken as drawn tubing, stainless steel as steel"
  ],
  "pipe.wallRoughnesses": [
    "moody-1944, figure 2; recalled",
    "common practice: plastics taken as drawn tubing, stainless steel as steel"
  ],
  "plan.citationsOf": [
    "derived: the ids in the plan's own data"
  ],
  "plan.diagnoseRecord": [
    "derived: the plan's own model, fitted by the field module"
  ],
  "plan.JobError": [
    "derived"
  ],
  "plan.planSystem": [
    "derived: the modules' methods, put together"
  ],
  "plan.readJob": [
    "derived"
  ],
  "plan.readJobText": [
    "derived"
  ],
  "plan.readRecord": [
    "derived"
  ],
  "plan.asBuiltRecord": [
    "derived: the plan's sheet against the readings"
  ],
  "plan.recordReport": [
    "derived: the record's own data"
  ],
  "plan.reportOf": [
    "derived: the plan's own data"
  ],
  "plan.sampleJob": [
    "derived: invented for the examples"
  ],
  "plot.chartsOf": [
    "derived: the plan's own figures"
  ],
  "plot.dayChart": [
    "derived: the run's own samples and events"
  ],
  "plot.frictionChart": [
    "colebrook-1939",
    "derived: Darcy–Weisbach for 100 lengths of pipe"
  ],
  "plot.frictionFactorChart": [
    "moody-1944: the form of the chart and its bounds",
    "colebrook-1939: the curves",
    "poiseuille-1840: the laminar line"
  ],
  "plot.gradeLineChart": [
    "derived: the stations' own figures"
  ],
  "plot.pumpChart": [
    "derived: the points of `operatingPoint` on both curves",
    "ansi-hi-9.6.3: the flows a pump is best run at, 70 to 120 % of its best"
  ],
  "plot.sensitivityChart": [
    "derived: the bars' own figures"
  ],
  "plot.startsChart": [
    "derived: usable water in proportion to the volume"
  ],
  "plot.voltageChart": [
    "derived: the drops of the cables, one after the other"
  ],
  "pump.acceptanceBand": [
    "iso-9906: acceptance where the curve touches the tolerance cross (from memory)"
  ],
  "pump.acceptanceTolerance": [
    "iso-9906, acceptance-grade table, read in a transcription; the small-pump rule from memory"
  ],
  "pump.operatingBand": [
    "iso-9906"
  ],
  "pump.curveAtSpeed": [
    "derived: similarity of flow in one machine at two speeds"
  ],
  "pump.curveTrimmed": [
    "common practice"
  ],
  "pump.dutyAtSpeed": [
    "derived: similarity of flow in one machine at two speeds"
  ],
  "pump.bestEfficiencyPoint": [
    "derived: the vertex of a parabola"
  ],
  "pump.curvesInParallel": [
    "derived: the pumps share inlet and outlet"
  ],
  "pump.curvesInSeries": [
    "derived: the same water passes each pump"
  ],
  "pump.stagedCurve": [
    "derived: the same water passes each stage"
  ],
  "pump.pumpCurve": [
    "fritsch-carlson-1980: the condition for monotone pieces",
    "iapws-sr6-08: the viscosity of water",
    "hyman-1983: limiting three-point slopes"
  ],
  "pump.pumpDuty": [
    "ansi-hi-9.6.3, preferred operating region, from memory"
  ],
  "pump.pumpingEnergy": [
    "derived: weight times height over efficiency"
  ],
  "pump.runningCost": [
    "derived: power times time"
  ],
  "pump.fitPumpCurve": [
    "golub-van-loan: least squares by reflections"
  ],
  "pump.pumpFlowAt": [
    "derived: the inverse of the curve"
  ],
  "pump.minimumFlow": [
    "derived: conservation of energy"
  ],
  "pump.pumpTemperatureRise": [
    "derived: conservation of energy"
  ],
  "pump.operatingPoint": [
    "derived: the pump adds the head that the system takes",
    "brent-1973: the method where the system's friction is not smooth"
  ],
  "pump.hydraulicPower": [
    "derived: weight per second times height"
  ],
  "pump.pumpPower": [
    "derived: definitions of the efficiencies"
  ],
  "pump.pumpPowerAt": [
    "derived: definitions of the efficiencies"
  ],
  "pump.npshRequiredAt": [
    "fritsch-carlson-1980"
  ],
  "pump.pumpEfficiencyAt": [
    "fritsch-carlson-1980"
  ],
  "pump.pumpHeadAt": [
    "fritsch-carlson-1980"
  ],
  "pump.pumpHeadSlopeAt": [
    "derived: the derivative of the interpolating cubic"
  ],
  "pump.pumpInputPowerAt": [
    "fritsch-carlson-1980"
  ],
  "pump.shutoffPressure": [
    "derived: hydrostatics"
  ],
  "pump.specificSpeed": [
    "derived: similarity of flow in machines of one shape"
  ],
  "pump.constantPressure": [
    "derived: affinity laws, see {@link curveAtSpeed }"
  ],
  "pump.speedFor": [
    "derived: affinity laws, see {@link curveAtSpeed }"
  ],
  "pump.wornCurve": [
    "common practice"
  ],
  "selection.choosePump": [
    "derived: each pump is solved in each use"
  ],
  "selection.leastCostSizes": [
    "derived: dynamic programming over the tree with dominance and an exact bound (`bellman-1957`)"
  ],
  "selection.partWayProgramme": [
    "karmeli-1968: the programme of a branched layout",
    "derived: the rows left out"
  ],
  "selection.partWaySizes": [
    "karmeli-1968: the programme of a branched layout",
    "derived: the bound by weak duality"
  ],
  "selection.programmeText": [
    "common practice"
  ],
  "selection.sensitivity": [
    "derived: central difference"
  ],
  "selection.tornado": [
    "derived: one evaluation at each end of each range"
  ],
  "selection.countVariants": [
    "derived: a product"
  ],
  "selection.sweep": [
    "derived: counting in the mixed base of the lengths"
  ],
  "selection.sweepParts": [
    "derived: counting"
  ],
  "selection.variantAt": [
    "derived: the place written in the mixed base of the lengths"
  ],
  "sources.basesOf": [
    "derived: the docstrings, collected"
  ],
  "sources.bibliography": [
    "derived: the records of the modules, put together"
  ],
  "sources.findSource": [
    "derived: a look-up"
  ],
  "sources.asBibtex": [
    "derived: the entries, one after another"
  ],
  "sources.asCslJson": [
    "derived: the records are CSL items"
  ],
  "sources.citeAsBibtex": [
    "derived: the fields of the record under BibTeX's names"
  ],
  "sources.citeAsText": [
    "derived: the fields of the record in the usual order"
  ],
  "surge.closureSurge": [
    "joukowsky-1898",
    "michaud-1878"
  ],
  "surge.criticalTime": [
    "derived: time of travel"
  ],
  "surge.rigidColumnSurge": [
    "derived: Newton's second law"
  ],
  "surge.compositeLine": [
    "derived: equal time of travel and equal inertia"
  ],
  "surge.joukowsky": [
    "joukowsky-1898"
  ],
  "surge.plasticWaveSpeed": [
    "awwa-m23: PVC (from memory)",
    "awwa-m55: PE (from memory)"
  ],
  "surge.checkValveSlam": [
    "derived: free fall of a rigid column, then Joukowsky's equation"
  ],
  "surge.pumpStopSurge": [
    "joukowsky-1898",
    "derived: reflection at an open and at a closed end, friction left out of the return"
  ],
  "surge.simulateSurge": [
    "wylie-streeter-1993, chapters 3 and 8 (from memory)"
  ],
  "surge.surgeAllowance": [
    "awwa-m23: PVC (from memory); the 1.6 also in moser-2008, example 4.2",
    "awwa-m55: PE (from memory)"
  ],
  "surge.waveSpeed": [
    "wylie-streeter-1993, chapter 2 (from memory)"
  ],
  "system.pipeMainLoss": [
    "colebrook-1939: the friction factor",
    "derived: the sum of pipe and fittings"
  ],
  "system.simulate": [
    "derived: continuity of water, and the head the pump and the system agree on"
  ],
  "tank.storedWater": [
    "derived: Boyle's law, and its polytropic form, on the air in the tank"
  ],
  "tank.airEnergy": [
    "derived: isentropic expansion of an ideal gas"
  ],
  "tank.airLoss": [
    "derived: Boyle's law twice"
  ],
  "tank.airOverWaterDrawdown": [
    "derived: Boyle's law"
  ],
  "tank.airOverWaterSize": [
    "washington-state-department-2009, section 11.1.2, equation 11-2"
  ],
  "tank.waterSeal": [
    "derived: a cylinder"
  ],
  "tank.bankDrawdown": [
    "derived: Boyle's law and the weight of the water between the levels"
  ],
  "tank.tankCycle": [
    "derived: a volume over a flow"
  ],
  "tank.worstDemand": [
    "derived: the minimum of W/(Q − q) + W/q over q"
  ],
  "tank.tankDrawdown": [
    "pelikan-2006, example 1",
    "water-systems-council-2007, p. 3: the recommended precharge"
  ],
  "tank.prechargeAtTemperature": [
    "derived: ideal gas at constant volume"
  ],
  "tank.recommendedPrecharge": [
    "water-systems-council-2007, p. 3"
  ],
  "tank.peakStorage": [
    "the-driller-when-the-well, storage paragraph"
  ],
  "tank.publicSystemTank": [
    "great-lakes-upper-recommended-standards-for, section 7.2.2 b"
  ],
  "tank.tankSizeForRunTime": [
    "the-driller-when-the-well, storage paragraph: 10 gal of drawdown for a 10 gpm pump"
  ],
  "tank.tankSizeForStarts": [
    "washington-state-department-2009, section 11.1: the 15 Q/N of its equations"
  ],
  "tank.motorStartLimit": [
    "water-systems-council-performance-standard-for, introductory text"
  ],
  "tank.stockTank": [
    "us-environmental-protection-seahome-library-private, Pressure Tank Selection Chart"
  ],
  "tank.tankFillTime": [
    "derived: a volume over a flow, summed along the pump's curve"
  ],
  "tank.worstDemandOnCurve": [
    "derived: the minimum of the cycle over the use"
  ],
  "units.barAbsolute": [
    "nist-sp811"
  ],
  "units.inBarAbsolute": [
    "nist-sp811"
  ],
  "units.inchesOfMercury": [
    "nist-sp811"
  ],
  "units.inInchesOfMercury": [
    "nist-sp811"
  ],
  "units.inKilopascalsAbsolute": [
    "nist-sp811"
  ],
  "units.inMegapascalsAbsolute": [
    "nist-sp811"
  ],
  "units.inPascalsAbsolute": [
    "nist-sp811"
  ],
  "units.inPsia": [
    "nist-sp811"
  ],
  "units.inStandardAtmospheres": [
    "nist-sp811"
  ],
  "units.kilopascalsAbsolute": [
    "nist-sp811"
  ],
  "units.megapascalsAbsolute": [
    "nist-sp811"
  ],
  "units.pascalsAbsolute": [
    "nist-sp811"
  ],
  "units.psia": [
    "nist-sp811"
  ],
  "units.standardAtmospheres": [
    "nist-sp811"
  ],
  "units.inKilovoltAmperes": [
    "nist-sp811"
  ],
  "units.inVoltAmperes": [
    "nist-sp811"
  ],
  "units.kilovoltAmperes": [
    "nist-sp811"
  ],
  "units.voltAmperes": [
    "nist-sp811"
  ],
  "units.acres": [
    "nist-sp811"
  ],
  "units.circularMils": [
    "nist-sp811"
  ],
  "units.hectares": [
    "nist-sp811"
  ],
  "units.inAcres": [
    "nist-sp811"
  ],
  "units.inCircularMils": [
    "nist-sp811"
  ],
  "units.inHectares": [
    "nist-sp811"
  ],
  "units.inSquareCentimetres": [
    "nist-sp811"
  ],
  "units.inSquareFeet": [
    "nist-sp811"
  ],
  "units.inSquareInches": [
    "nist-sp811"
  ],
  "units.inSquareMetres": [
    "nist-sp811"
  ],
  "units.inSquareMillimetres": [
    "nist-sp811"
  ],
  "units.squareCentimetres": [
    "nist-sp811"
  ],
  "units.squareFeet": [
    "nist-sp811"
  ],
  "units.squareInches": [
    "nist-sp811"
  ],
  "units.squareMetres": [
    "nist-sp811"
  ],
  "units.squareMillimetres": [
    "nist-sp811"
  ],
  "units.absoluteOfGauge": [
    "derived"
  ],
  "units.gaugeOfAbsolute": [
    "derived"
  ],
  "units.gramsPerLitre": [
    "nist-sp811"
  ],
  "units.inGramsPerLitre": [
    "nist-sp811"
  ],
  "units.inKilogramsPerCubicMetreConcentration": [
    "nist-sp811"
  ],
  "units.inMgPerLitre": [
    "nist-sp811"
  ],
  "units.inMicrogramsPerLitre": [
    "nist-sp811"
  ],
  "units.kilogramsPerCubicMetreConcentration": [
    "nist-sp811"
  ],
  "units.mgPerLitre": [
    "nist-sp811"
  ],
  "units.microgramsPerLitre": [
    "nist-sp811"
  ],
  "units.inMgMinutesPerLitre": [
    "nist-sp811"
  ],
  "units.mgMinutesPerLitre": [
    "nist-sp811"
  ],
  "units.amperes": [
    "nist-sp811"
  ],
  "units.inAmperes": [
    "nist-sp811"
  ],
  "units.inMilliamperes": [
    "nist-sp811"
  ],
  "units.milliamperes": [
    "nist-sp811"
  ],
  "units.celsiusDegreeDays": [
    "nist-sp811"
  ],
  "units.fahrenheitDegreeDays": [
    "nist-sp811"
  ],
  "units.inCelsiusDegreeDays": [
    "nist-sp811"
  ],
  "units.inFahrenheitDegreeDays": [
    "nist-sp811"
  ],
  "units.inKilogramsPerCubicMetre": [
    "nist-sp811"
  ],
  "units.inPoundsPerCubicFoot": [
    "nist-sp811"
  ],
  "units.kilogramsPerCubicMetre": [
    "nist-sp811"
  ],
  "units.poundsPerCubicFoot": [
    "nist-sp811"
  ],
  "units.days": [
    "nist-sp811"
  ],
  "units.hours": [
    "nist-sp811"
  ],
  "units.inDays": [
    "nist-sp811"
  ],
  "units.inHours": [
    "nist-sp811"
  ],
  "units.inMilliseconds": [
    "nist-sp811"
  ],
  "units.inMinutes": [
    "nist-sp811"
  ],
  "units.inSeconds": [
    "nist-sp811"
  ],
  "units.inYears": [
    "nist-sp811"
  ],
  "units.milliseconds": [
    "nist-sp811"
  ],
  "units.minutes": [
    "nist-sp811"
  ],
  "units.seconds": [
    "nist-sp811"
  ],
  "units.years": [
    "nist-sp811"
  ],
  "units.centipoise": [
    "nist-sp811"
  ],
  "units.inCentipoise": [
    "nist-sp811"
  ],
  "units.inMillipascalSeconds": [
    "nist-sp811"
  ],
  "units.inPascalSeconds": [
    "nist-sp811"
  ],
  "units.millipascalSeconds": [
    "nist-sp811"
  ],
  "units.pascalSeconds": [
    "nist-sp811"
  ],
  "units.btu": [
    "nist-sp811"
  ],
  "units.inBtu": [
    "nist-sp811"
  ],
  "units.inJoules": [
    "nist-sp811"
  ],
  "units.inKilowattHours": [
    "nist-sp811"
  ],
  "units.inMegajoules": [
    "nist-sp811"
  ],
  "units.inWattHours": [
    "nist-sp811"
  ],
  "units.joules": [
    "nist-sp811"
  ],
  "units.kilowattHours": [
    "nist-sp811"
  ],
  "units.megajoules": [
    "nist-sp811"
  ],
  "units.wattHours": [
    "nist-sp811"
  ],
  "units.inKilonewtons": [
    "nist-sp811"
  ],
  "units.inNewtons": [
    "nist-sp811"
  ],
  "units.inPoundsForce": [
    "nist-sp811"
  ],
  "units.kilonewtons": [
    "nist-sp811"
  ],
  "units.newtons": [
    "nist-sp811"
  ],
  "units.poundsForce": [
    "nist-sp811"
  ],
  "units.format": [
    "common practice"
  ],
  "units.hertz": [
    "nist-sp811"
  ],
  "units.inHertz": [
    "nist-sp811"
  ],
  "units.inPerDay": [
    "nist-sp811"
  ],
  "units.inPerHour": [
    "nist-sp811"
  ],
  "units.inPerMinute": [
    "nist-sp811"
  ],
  "units.perDay": [
    "nist-sp811"
  ],
  "units.perHour": [
    "nist-sp811"
  ],
  "units.perMinute": [
    "nist-sp811"
  ],
  "units.bar": [
    "nist-sp811"
  ],
  "units.inBar": [
    "nist-sp811"
  ],
  "units.inKilopascals": [
    "nist-sp811"
  ],
  "units.inMegapascals": [
    "nist-sp811"
  ],
  "units.inPascals": [
    "nist-sp811"
  ],
  "units.inPsi": [
    "nist-sp811"
  ],
  "units.kilopascals": [
    "nist-sp811"
  ],
  "units.megapascals": [
    "nist-sp811"
  ],
  "units.pascals": [
    "nist-sp811"
  ],
  "units.psi": [
    "nist-sp811"
  ],
  "units.InputError": [
    "derived"
  ],
  "units.centistokes": [
    "nist-sp811"
  ],
  "units.inCentistokes": [
    "nist-sp811"
  ],
  "units.inSquareFeetPerSecond": [
    "nist-sp811"
  ],
  "units.inSquareMetresPerSecond": [
    "nist-sp811"
  ],
  "units.inSquareMillimetresPerSecond": [
    "nist-sp811"
  ],
  "units.squareFeetPerSecond": [
    "nist-sp811"
  ],
  "units.squareMetresPerSecond": [
    "nist-sp811"
  ],
  "units.squareMillimetresPerSecond": [
    "nist-sp811"
  ],
  "units.centimetres": [
    "nist-sp811"
  ],
  "units.feet": [
    "nist-sp811"
  ],
  "units.inCentimetres": [
    "nist-sp811"
  ],
  "units.inches": [
    "nist-sp811"
  ],
  "units.inFeet": [
    "nist-sp811"
  ],
  "units.inInches": [
    "nist-sp811"
  ],
  "units.inKilometres": [
    "nist-sp811"
  ],
  "units.inMetres": [
    "nist-sp811"
  ],
  "units.inMicrometres": [
    "nist-sp811"
  ],
  "units.inMiles": [
    "nist-sp811"
  ],
  "units.inMillimetres": [
    "nist-sp811"
  ],
  "units.inMils": [
    "nist-sp811"
  ],
  "units.inYards": [
    "nist-sp811"
  ],
  "units.kilometres": [
    "nist-sp811"
  ],
  "units.metres": [
    "nist-sp811"
  ],
  "units.micrometres": [
    "nist-sp811"
  ],
  "units.miles": [
    "nist-sp811"
  ],
  "units.millimetres": [
    "nist-sp811"
  ],
  "units.mils": [
    "nist-sp811"
  ],
  "units.yards": [
    "nist-sp811"
  ],
  "units.grams": [
    "nist-sp811"
  ],
  "units.inGrams": [
    "nist-sp811"
  ],
  "units.inKilograms": [
    "nist-sp811"
  ],
  "units.inMilligrams": [
    "nist-sp811"
  ],
  "units.inOunces": [
    "nist-sp811"
  ],
  "units.inPounds": [
    "nist-sp811"
  ],
  "units.inTonnes": [
    "nist-sp811"
  ],
  "units.kilograms": [
    "nist-sp811"
  ],
  "units.milligrams": [
    "nist-sp811"
  ],
  "units.ounces": [
    "nist-sp811"
  ],
  "units.pounds": [
    "nist-sp811"
  ],
  "units.tonnes": [
    "nist-sp811"
  ],
  "units.inKilogramsPerMetre": [
    "nist-sp811"
  ],
  "units.inPoundsPerFoot": [
    "nist-sp811"
  ],
  "units.kilogramsPerMetre": [
    "nist-sp811"
  ],
  "units.poundsPerFoot": [
    "nist-sp811"
  ],
  "units.gigapascals": [
    "nist-sp811"
  ],
  "units.inGigapascals": [
    "nist-sp811"
  ],
  "units.inMegapascalsModulus": [
    "nist-sp811"
  ],
  "units.inPascalsModulus": [
    "nist-sp811"
  ],
  "units.inPsiModulus": [
    "nist-sp811"
  ],
  "units.megapascalsModulus": [
    "nist-sp811"
  ],
  "units.pascalsModulus": [
    "nist-sp811"
  ],
  "units.psiModulus": [
    "nist-sp811"
  ],
  "units.btuPerHour": [
    "nist-sp811"
  ],
  "units.electricHorsepower": [
    "nist-sp811"
  ],
  "units.horsepower": [
    "nist-sp811"
  ],
  "units.inBtuPerHour": [
    "nist-sp811"
  ],
  "units.inElectricHorsepower": [
    "nist-sp811"
  ],
  "units.inHorsepower": [
    "nist-sp811"
  ],
  "units.inKilowatts": [
    "nist-sp811"
  ],
  "units.inMetricHorsepower": [
    "nist-sp811"
  ],
  "units.inWatts": [
    "nist-sp811"
  ],
  "units.kilowatts": [
    "nist-sp811"
  ],
  "units.metricHorsepower": [
    "nist-sp811"
  ],
  "units.watts": [
    "nist-sp811"
  ],
  "units.barDifference": [
    "nist-sp811"
  ],
  "units.inBarDifference": [
    "nist-sp811"
  ],
  "units.inKilopascalsDifference": [
    "nist-sp811"
  ],
  "units.inMegapascalsDifference": [
    "nist-sp811"
  ],
  "units.inPascalsDifference": [
    "nist-sp811"
  ],
  "units.inPsiDifference": [
    "nist-sp811"
  ],
  "units.kilopascalsDifference": [
    "nist-sp811"
  ],
  "units.megapascalsDifference": [
    "nist-sp811"
  ],
  "units.pascalsDifference": [
    "nist-sp811"
  ],
  "units.psiDifference": [
    "nist-sp811"
  ],
  "units.inPercent": [
    "nist-sp811"
  ],
  "units.inRatio": [
    "nist-sp811"
  ],
  "units.percent": [
    "nist-sp811"
  ],
  "units.ratio": [
    "nist-sp811"
  ],
  "units.inKilohms": [
    "nist-sp811"
  ],
  "units.inMegohms": [
    "nist-sp811"
  ],
  "units.inMilliohms": [
    "nist-sp811"
  ],
  "units.inOhms": [
    "nist-sp811"
  ],
  "units.kilohms": [
    "nist-sp811"
  ],
  "units.megohms": [
    "nist-sp811"
  ],
  "units.milliohms": [
    "nist-sp811"
  ],
  "units.ohms": [
    "nist-sp811"
  ],
  "units.inOhmsPerKilometre": [
    "nist-sp811"
  ],
  "units.inOhmsPerMetre": [
    "nist-sp811"
  ],
  "units.inOhmsPerThousandFeet": [
    "nist-sp811"
  ],
  "units.ohmsPerKilometre": [
    "nist-sp811"
  ],
  "units.ohmsPerMetre": [
    "nist-sp811"
  ],
  "units.ohmsPerThousandFeet": [
    "nist-sp811"
  ],
  "units.celsius": [
    "nist-sp811"
  ],
  "units.celsiusDegrees": [
    "nist-sp811"
  ],
  "units.fahrenheit": [
    "nist-sp811"
  ],
  "units.fahrenheitDegrees": [
    "nist-sp811"
  ],
  "units.inCelsius": [
    "nist-sp811"
  ],
  "units.inCelsiusDegrees": [
    "nist-sp811"
  ],
  "units.inFahrenheit": [
    "nist-sp811"
  ],
  "units.inFahrenheitDegrees": [
    "nist-sp811"
  ],
  "units.inKelvins": [
    "nist-sp811"
  ],
  "units.inKelvinsDifference": [
    "nist-sp811"
  ],
  "units.kelvins": [
    "nist-sp811"
  ],
  "units.kelvinsDifference": [
    "nist-sp811"
  ],
  "units.parseAbsolutePressure": [
    "common practice"
  ],
  "units.parseApparentPower": [
    "common practice"
  ],
  "units.parseArea": [
    "common practice"
  ],
  "units.parseConcentration": [
    "common practice"
  ],
  "units.parseCurrent": [
    "common practice"
  ],
  "units.parseDensity": [
    "common practice"
  ],
  "units.parseDuration": [
    "common practice"
  ],
  "units.parseDynamicViscosity": [
    "common practice"
  ],
  "units.parseEnergy": [
    "common practice"
  ],
  "units.parseForce": [
    "common practice"
  ],
  "units.parseFrequency": [
    "common practice"
  ],
  "units.parsePressure": [
    "common practice"
  ],
  "units.parseKinematicViscosity": [
    "common practice"
  ],
  "units.parseLength": [
    "common practice"
  ],
  "units.parseMass": [
    "common practice"
  ],
  "units.parseMassPerLength": [
    "common practice"
  ],
  "units.parseModulus": [
    "common practice"
  ],
  "units.parsePower": [
    "common practice"
  ],
  "units.parsePressureDifference": [
    "common practice"
  ],
  "units.parseRatio": [
    "common practice"
  ],
  "units.parseResistance": [
    "common practice"
  ],
  "units.parseResistancePerLength": [
    "common practice"
  ],
  "units.parseTemperature": [
    "common practice"
  ],
  "units.parseTemperatureDifference": [
    "common practice"
  ],
  "units.parseThermalConductivity": [
    "common practice"
  ],
  "units.parseTorque": [
    "common practice"
  ],
  "units.parseTransmissivity": [
    "common practice"
  ],
  "units.parseVelocity": [
    "common practice"
  ],
  "units.parseVoltage": [
    "common practice"
  ],
  "units.parseVolume": [
    "common practice"
  ],
  "units.parseFlow": [
    "common practice"
  ],
  "units.btuPerHourFootDegreeF": [
    "nist-sp811"
  ],
  "units.inBtuPerHourFootDegreeF": [
    "nist-sp811"
  ],
  "units.inWattsPerMetreKelvin": [
    "nist-sp811"
  ],
  "units.wattsPerMetreKelvin": [
    "nist-sp811"
  ],
  "units.inNewtonMetres": [
    "nist-sp811"
  ],
  "units.inPoundFeet": [
    "nist-sp811"
  ],
  "units.newtonMetres": [
    "nist-sp811"
  ],
  "units.poundFeet": [
    "nist-sp811"
  ],
  "units.gpmPerFoot": [
    "nist-sp811"
  ],
  "units.inGpmPerFoot": [
    "nist-sp811"
  ],
  "units.inLitresPerSecondPerMetre": [
    "nist-sp811"
  ],
  "units.inSquareFeetPerDay": [
    "nist-sp811"
  ],
  "units.inSquareMetresPerDay": [
    "nist-sp811"
  ],
  "units.inSquareMetresPerSecondTransmissivity": [
    "nist-sp811"
  ],
  "units.inUsGallonsPerDayPerFoot": [
    "nist-sp811"
  ],
  "units.litresPerSecondPerMetre": [
    "nist-sp811"
  ],
  "units.squareFeetPerDay": [
    "nist-sp811"
  ],
  "units.squareMetresPerDay": [
    "nist-sp811"
  ],
  "units.squareMetresPerSecondTransmissivity": [
    "nist-sp811"
  ],
  "units.usGallonsPerDayPerFoot": [
    "nist-sp811"
  ],
  "units.feetPerSecond": [
    "nist-sp811"
  ],
  "units.inFeetPerSecond": [
    "nist-sp811"
  ],
  "units.inKilometresPerHour": [
    "nist-sp811"
  ],
  "units.inMetresPerSecond": [
    "nist-sp811"
  ],
  "units.inMilesPerHour": [
    "nist-sp811"
  ],
  "units.kilometresPerHour": [
    "nist-sp811"
  ],
  "units.metresPerSecond": [
    "nist-sp811"
  ],
  "units.milesPerHour": [
    "nist-sp811"
  ],
  "units.inKilovolts": [
    "nist-sp811"
  ],
  "units.inMillivolts": [
    "nist-sp811"
  ],
  "units.inVolts": [
    "nist-sp811"
  ],
  "units.kilovolts": [
    "nist-sp811"
  ],
  "units.millivolts": [
    "nist-sp811"
  ],
  "units.volts": [
    "nist-sp811"
  ],
  "units.acreFeet": [
    "nist-sp811"
  ],
  "units.cubicFeet": [
    "nist-sp811"
  ],
  "units.cubicInches": [
    "nist-sp811"
  ],
  "units.cubicMetres": [
    "nist-sp811"
  ],
  "units.cubicYards": [
    "nist-sp811"
  ],
  "units.imperialFluidOunces": [
    "nist-sp811"
  ],
  "units.imperialGallons": [
    "nist-sp811"
  ],
  "units.inAcreFeet": [
    "nist-sp811"
  ],
  "units.inCubicFeet": [
    "nist-sp811"
  ],
  "units.inCubicInches": [
    "nist-sp811"
  ],
  "units.inCubicMetres": [
    "nist-sp811"
  ],
  "units.inCubicYards": [
    "nist-sp811"
  ],
  "units.inImperialFluidOunces": [
    "nist-sp811"
  ],
  "units.inImperialGallons": [
    "nist-sp811"
  ],
  "units.inLitres": [
    "nist-sp811"
  ],
  "units.inMillilitres": [
    "nist-sp811"
  ],
  "units.inUsCups": [
    "nist-sp811"
  ],
  "units.inUsFluidOunces": [
    "nist-sp811"
  ],
  "units.inUsGallons": [
    "nist-sp811"
  ],
  "units.inUsPints": [
    "nist-sp811"
  ],
  "units.inUsQuarts": [
    "nist-sp811"
  ],
  "units.inUsTablespoons": [
    "nist-sp811"
  ],
  "units.litres": [
    "nist-sp811"
  ],
  "units.millilitres": [
    "nist-sp811"
  ],
  "units.usCups": [
    "nist-sp811"
  ],
  "units.usFluidOunces": [
    "nist-sp811"
  ],
  "units.usGallons": [
    "nist-sp811"
  ],
  "units.usPints": [
    "nist-sp811"
  ],
  "units.usQuarts": [
    "nist-sp811"
  ],
  "units.usTablespoons": [
    "nist-sp811"
  ],
  "units.cubicFeetPerSecond": [
    "nist-sp811"
  ],
  "units.cubicMetresPerDay": [
    "nist-sp811"
  ],
  "units.cubicMetresPerHour": [
    "nist-sp811"
  ],
  "units.cubicMetresPerSecond": [
    "nist-sp811"
  ],
  "units.gpm": [
    "nist-sp811"
  ],
  "units.imperialGallonsPerDay": [
    "nist-sp811"
  ],
  "units.imperialGpm": [
    "nist-sp811"
  ],
  "units.inCubicFeetPerSecond": [
    "nist-sp811"
  ],
  "units.inCubicMetresPerDay": [
    "nist-sp811"
  ],
  "units.inCubicMetresPerHour": [
    "nist-sp811"
  ],
  "units.inCubicMetresPerSecond": [
    "nist-sp811"
  ],
  "units.inGpm": [
    "nist-sp811"
  ],
  "units.inImperialGallonsPerDay": [
    "nist-sp811"
  ],
  "units.inImperialGpm": [
    "nist-sp811"
  ],
  "units.inLitresPerHour": [
    "nist-sp811"
  ],
  "units.inLitresPerMinute": [
    "nist-sp811"
  ],
  "units.inLitresPerSecond": [
    "nist-sp811"
  ],
  "units.inUsGallonsPerDay": [
    "nist-sp811"
  ],
  "units.inUsGallonsPerHour": [
    "nist-sp811"
  ],
  "units.inUsGallonsPerSecond": [
    "nist-sp811"
  ],
  "units.litresPerHour": [
    "nist-sp811"
  ],
  "units.litresPerMinute": [
    "nist-sp811"
  ],
  "units.litresPerSecond": [
    "nist-sp811"
  ],
  "units.usGallonsPerDay": [
    "nist-sp811"
  ],
  "units.usGallonsPerHour": [
    "nist-sp811"
  ],
  "units.usGallonsPerSecond": [
    "nist-sp811"
  ],
  "water.atmosphereAt": [
    "iso-2533, section 2"
  ],
  "water.waterDensity": [
    "iapws-sr6-08, equation 2"
  ],
  "water.waterDynamicViscosity": [
    "iapws-sr6-08, equation 7"
  ],
  "water.waterKinematicViscosity": [
    "derived: the definition, from iapws-sr6-08, equations 2 and 7"
  ],
  "water.waterBulkModulus": [
    "derived: definition of the speed of sound, from iapws-sr6-08"
  ],
  "water.waterIsothermalBulkModulus": [
    "derived: definition, from iapws-sr6-08"
  ],
  "water.waterSpeedOfSound": [
    "iapws-sr6-08, equations 2 to 5 and table 3"
  ],
  "water.waterVapourPressure": [
    "iapws-sr1-86, equation 1"
  ],
  "water.waterVapourPressureHead": [
    "derived: weight of a column, from iapws-sr1-86, equation 1 and iapws-sr6-08, equation 2"
  ],
  "water.waterAt": [
    "iapws-sr6-08",
    "iapws-sr1-86"
  ],
  "well.annulus": [
    "derived: area between two circles"
  ],
  "well.annulusVolume": [
    "derived: area between two circles, times the length"
  ],
  "well.casingVolume": [
    "derived: volume of a cylinder"
  ],
  "well.waterColumn": [
    "derived: difference of depths"
  ],
  "well.dailyYield": [
    "derived: what flows in and out of a cylinder"
  ],
  "well.peakSupply": [
    "derived: a sum of volumes"
  ],
  "well.drawdownAt": [
    "jacob-1947"
  ],
  "well.singleTestLaw": [
    "derived: proportion"
  ],
  "well.specificCapacity": [
    "derived: definition"
  ],
  "well.wellEfficiency": [
    "jacob-1947"
  ],
  "well.hangingLoad": [
    "derived: weights, and Archimedes' principle"
  ],
  "well.hangingStretch": [
    "derived: Hooke's law"
  ],
  "well.dropPipeFixings": [
    "common practice"
  ],
  "well.motorTorque": [
    "derived: power over angular speed"
  ],
  "well.fitTheis": [
    "theis-1935"
  ],
  "well.motorCooling": [
    "common practice"
  ],
  "well.pumpSetting": [
    "common practice"
  ],
  "well.fitRecovery": [
    "theis-1935"
  ],
  "well.residualDrawdown": [
    "theis-1935"
  ],
  "well.recuperation": [
    "derived: what flows into a cylinder"
  ],
  "well.sichardtRadius": [
    "kyrieleis-sichardt-1930 (from memory)"
  ],
  "well.steadyFlowConfined": [
    "thiem-1906"
  ],
  "well.steadyFlowUnconfined": [
    "dupuit-1863"
  ],
  "well.fitStepTest": [
    "jacob-1947: the law",
    "bierschenk-1963: the plot of specific drawdown"
  ],
  "well.wellCondition": [
    "walton-1962, well loss; classes from memory"
  ],
  "well.drawdownAfterRest": [
    "derived: what flows into a cylinder"
  ],
  "well.drawOnStorage": [
    "derived: what flows in and out of a cylinder"
  ],
  "well.restTime": [
    "derived: what flows into a cylinder"
  ],
  "well.aquiferFromPlottedLine": [
    "cooper-jacob-1946"
  ],
  "well.fitStraightLine": [
    "cooper-jacob-1946"
  ],
  "well.drawdownOfSchedule": [
    "theis-1935: superposition of solutions"
  ],
  "well.intermittentSchedule": [
    "derived: a list of on and off"
  ],
  "well.availableDrawdown": [
    "derived: difference of depths"
  ],
  "well.flowForDrawdown": [
    "jacob-1947"
  ],
  "well.sustainableFlow": [
    "theis-1935",
    "jacob-1947: the loss in the well"
  ],
  "well.tensileCheck": [
    "derived: force over area"
  ],
  "well.aquiferLaw": [
    "theis-1935",
    "jacob-1947: the loss in the well"
  ],
  "well.cooperJacobDrawdown": [
    "cooper-jacob-1946"
  ],
  "well.theisDrawdown": [
    "theis-1935"
  ],
  "well.transmissivityFromTest": [
    "theis-1935"
  ],
  "well.wellFunction": [
    "nist-dlmf, 6.6.2 and 6.9.1",
    "theis-1935"
  ]
};
