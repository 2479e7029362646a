"""The fluids of the program: name here, name in the library, other names people write, sources of the equation and of
the surface tension. A further fluid is one line here and one in src/matter/every-refrigerant/index.ts."""

MULERO = "A. Mulero, I. Cachadina, M. I. Parra (2012), J. Phys. Chem. Ref. Data 41, 043105"
MULERO_2014 = "A. Mulero, I. Cachadina (2014), J. Phys. Chem. Ref. Data 43, 023104"
WATER_TENSION = "IAPWS R1-76(2014)"
OKADA = "M. Okada, T. Shibata, Y. Sato, Y. Higashi (1999), Int. J. Thermophys. 20, 119"
LEMMON_BLENDS = "E. W. Lemmon (2003), Int. J. Thermophys. 24, 991"
LEMMON_SPAN = "E. W. Lemmon, R. Span (2006), J. Chem. Eng. Data 51, 785"
BUECKER = "D. Buecker, W. Wagner (2006), J. Phys. Chem. Ref. Data 35, 929"

FLUIDS = [
    ("R134a", "R134a", ["HFC-134a", "1,1,1,2-tetrafluoroethane"],
     "R. Tillner-Roth, H. D. Baehr (1994), J. Phys. Chem. Ref. Data 23, 657", MULERO),
    ("R600a", "IsoButane", ["isobutane", "HC-600a", "2-methylpropane"], BUECKER, MULERO),
    ("R290", "n-Propane", ["propane", "HC-290"],
     "E. W. Lemmon, M. O. McLinden, W. Wagner (2009), J. Chem. Eng. Data 54, 3141", MULERO),
    ("R1270", "Propylene", ["propylene", "propene", "HC-1270"],
     "E. W. Lemmon, U. Overhoff, M. O. McLinden, W. Wagner (2013), reference equation for propylene, as used by NIST", MULERO),
    ("R12", "R12", ["CFC-12", "dichlorodifluoromethane"],
     "V. Marx, A. Pruss, W. Wagner (1992), VDI Fortschritt-Berichte 19/57", MULERO),
    ("R22", "R22", ["HCFC-22", "chlorodifluoromethane"],
     "A. Kamei, S. W. Beyerlein, R. T Jacobsen (1995), Int. J. Thermophys. 16, 1155", MULERO),
    ("R32", "R32", ["HFC-32", "difluoromethane"],
     "R. Tillner-Roth, A. Yokozeki (1997), J. Phys. Chem. Ref. Data 26, 1273", MULERO),
    ("R152a", "R152A", ["HFC-152a", "1,1-difluoroethane"],
     "S. L. Outcalt, M. O. McLinden (1996), J. Phys. Chem. Ref. Data 25, 605", MULERO),
    ("R1234yf", "R1234yf", ["HFO-1234yf", "2,3,3,3-tetrafluoropropene"],
     "E. W. Lemmon, R. Akasaka (2022), Int. J. Thermophys. 43, 119", MULERO),
    ("R1234ze(E)", "R1234ze(E)", ["R1234ze", "HFO-1234ze(E)", "trans-1,3,3,3-tetrafluoropropene"],
     "M. Thol, E. W. Lemmon (2016), Int. J. Thermophys. 37, 28", MULERO_2014),
    ("R744", "CarbonDioxide", ["carbon dioxide", "CO2"],
     "R. Span, W. Wagner (1996), J. Phys. Chem. Ref. Data 25, 1509", MULERO),
    ("R717", "Ammonia", ["ammonia", "NH3"],
     "K. Gao, J. Wu, I. H. Bell, A. H. Harvey, E. W. Lemmon (2023), J. Phys. Chem. Ref. Data 52, 013102", MULERO),
    ("R404A", "R404A", ["HFC-404A"], LEMMON_BLENDS, OKADA),
    ("R407C", "R407C", ["HFC-407C"], LEMMON_BLENDS, OKADA),
    ("R410A", "R410A", ["HFC-410A"], LEMMON_BLENDS, OKADA),
    ("R507A", "R507A", ["R507", "HFC-507A"], LEMMON_BLENDS, OKADA),
    ("R600", "n-Butane", ["butane", "n-butane", "HC-600"], BUECKER, MULERO),
    ("R125", "R125", ["HFC-125", "pentafluoroethane"],
     "E. W. Lemmon, R. T Jacobsen (2005), J. Phys. Chem. Ref. Data 34, 69", MULERO),
    ("R143a", "R143a", ["HFC-143a", "1,1,1-trifluoroethane"],
     "E. W. Lemmon, R. T Jacobsen (2000), J. Phys. Chem. Ref. Data 29, 521", MULERO_2014),
    ("R245fa", "R245fa", ["HFC-245fa", "1,1,1,3,3-pentafluoropropane"],
     "R. Akasaka, Y. Zhou, E. W. Lemmon (2015), J. Phys. Chem. Ref. Data 44, 013104", MULERO),
    ("R142b", "R142b", ["HCFC-142b", "1-chloro-1,1-difluoroethane"], LEMMON_SPAN, MULERO),
    ("R124", "R124", ["HCFC-124", "1-chloro-1,2,2,2-tetrafluoroethane"],
     "B. de Vries, R. Tillner-Roth, H. D. Baehr (1995), 19th International Congress of Refrigeration, IVa, 582", MULERO),
    ("R227ea", "R227EA", ["HFC-227ea", "1,1,1,2,3,3,3-heptafluoropropane"],
     "E. W. Lemmon, R. Span (2015), J. Chem. Eng. Data 60, 3745", MULERO),
    ("R236fa", "R236FA", ["HFC-236fa", "1,1,1,3,3,3-hexafluoropropane"],
     "J. Pan, X. Rui, X. Zhao, L. Qiu (2012), Fluid Phase Equilibria 321, 10", MULERO),
    ("R718", "Water", ["water", "H2O"],
     "IAPWS R6-95(2018); W. Wagner, A. Pruss (2002), J. Phys. Chem. Ref. Data 31, 387", WATER_TENSION),
]
